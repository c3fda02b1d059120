import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

// A gull that stays 1 m off where it should be 2 m off: 1 m short at twice the size, half a metre brought back to size 1.
const sky = (parent: string | null) => rigOf([bone('quay', null, [0, 0, 0]), bone('gull', parent, [0, 0, 1])]);

test('a gull that the quay does not carry stays behind when the quay grows', () => {
  const exercise = exerciseOf(sky(null), [], { kind: 'scales-whole', bones: ['gull'], root: 'quay', allowed: 1 });
  expectMissed(found(exercise), 500);
  expectMet(found(exercise, { rig: sky('quay') }), 0);
});
