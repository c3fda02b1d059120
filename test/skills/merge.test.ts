import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyOf } from '../../src/skills/attempt.ts';
import { merged } from '../../src/skills/merge.ts';
import { attempts } from './support/arbitrary.ts';

test('the order of merging does not matter, nor does merging twice', () => {
  fc.assert(
    fc.property(attempts, attempts, attempts, (a, b, c) => {
      expect(merged(a, b)).toEqual(merged(b, a));
      expect(merged(merged(a, b), c)).toEqual(merged(a, merged(b, c)));
      expect(merged(merged(a), a)).toEqual(merged(a));
    }),
  );
});

test('no attempt is lost, none stands twice, and time goes forward', () => {
  fc.assert(
    fc.property(attempts, attempts, (a, b) => {
      const all = merged(a, b);
      const keys = (list: typeof a) => new Set(list.map((each) => keyOf(each).join()));
      expect(keys(all)).toEqual(keys([...a, ...b]));
      expect(all.length).toBe(keys(all).size);
      expect(all.map(({ when }) => when)).toEqual(all.map(({ when }) => when).sort((x, y) => x - y));
    }),
  );
});

test('of two accounts of one attempt the less favourable stands, with the skills of both', () => {
  const one = { exercise: 'flinch', seed: 0, when: 1, skills: ['diagnose'], passed: true, aided: false, named: true };
  const other = { ...one, skills: ['mirror'], passed: false, aided: true, named: false };
  const both = { ...one, skills: ['diagnose', 'mirror'], passed: false, aided: true, named: false };
  expect(merged([one], [other])).toEqual([both]);
});
