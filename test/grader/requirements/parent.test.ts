import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const quay = (parent: string | null) => rigOf([bone('post', null, [0, 0, 0]), bone('vane', parent, [0, 1, 0])]);

test('a vane under nothing, where post is asked', () => {
  const exercise = exerciseOf(quay(null), [], { kind: 'parent', bone: 'vane', is: ['post'], allowed: 0 });
  expectMissed(found(exercise), 1);
  expectMet(found(exercise, { rig: quay('post') }), 0);
});
