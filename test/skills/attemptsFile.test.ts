import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attemptsDocument, readAttempts } from '../../src/skills/attemptsFile.ts';
import { merged } from '../../src/skills/merge.ts';
import { attempts } from './support/arbitrary.ts';
import { attempt } from './support/course.ts';

const one = attempt('one-vane', 4);
const fileOf = (change: object, ofAttempt: object = {}) =>
  JSON.stringify({ ...attemptsDocument([]), attempts: [one, { ...one, seed: 5, ...ofAttempt }], ...change });

test('what is read back is what was saved', () => {
  fc.assert(
    fc.property(attempts, (list) => {
      expect(readAttempts(JSON.stringify(attemptsDocument(list)))).toEqual({ ok: true, value: merged(list) });
    }),
  );
});

describe('a file that departs from the format is refused with its place', () => {
  const FILES: [what: string, text: string, place: string, found: string][] = [
    ['no JSON', '{"format": oars', '', '"o"'],
    ['another format', fileOf({ format: 'counterpose/answer' }), '/format', '"counterpose/answer"'],
    ['a later version', fileOf({ version: 2 }), '/version', '2'],
    ['an unknown field', fileOf({ points: 10 }), '/points', 'an unknown field "points"'],
    ['no attempts', fileOf({ attempts: undefined }), '/attempts', 'nothing'],
    ['a seed that is none', fileOf({}, { seed: -1 }), '/attempts/1/seed', '-1'],
    ['a seed of seven bytes', fileOf({}, { seed: 2 ** 48 }), '/attempts/1/seed', '281474976710656'],
    ['a time that is none', fileOf({}, { when: 'noon' }), '/attempts/1/when', '"noon"'],
    ['a skill that is no id', fileOf({}, { skills: ['Aim!'] }), '/attempts/1/skills/0', '"Aim!"'],
    ['a skill twice', fileOf({}, { skills: ['aim', 'aim'] }), '/attempts/1/skills/1', '"aim" a second time'],
    ['passed in words', fileOf({}, { passed: 'yes' }), '/attempts/1/passed', '"yes"'],
    ['a field misspelt', fileOf({}, { aidded: true }), '/attempts/1/aidded', 'an unknown field "aidded"'],
  ];
  test.each(FILES)('%s', (_what, text, place, found) => {
    expect(readAttempts(text)).toMatchObject({ ok: false, refusal: { place, found: expect.stringContaining(found) } });
  });
});
