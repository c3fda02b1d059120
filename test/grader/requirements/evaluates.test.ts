import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const after = (source: string) => ({ links: [{ name: 'after', kind: 'follow', source }] });
const round = rigOf([bone('kite', null, [0, 0, 2], after('vane')), bone('vane', null, [0, 0, 0], after('kite'))]);
const straight = rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0], after('kite'))]);

test('two bones that follow each other cannot be evaluated', () => {
  const exercise = exerciseOf(straight, [], { kind: 'evaluates', allowed: 0 });
  expectMet(found(exercise), 0);
  expectMissed(found(exercise, { rig: round }), 1);
});
