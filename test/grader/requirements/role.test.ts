import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const quay = (role: string) => rigOf([bone('vane', null, [0, 0, 0], { role })]);

test('skin, where helper or guide is asked', () => {
  const exercise = exerciseOf(quay('skin'), [], { kind: 'role', bone: 'vane', is: ['helper', 'guide'], allowed: 0 });
  expectMissed(found(exercise), 1);
  expectMet(found(exercise, { rig: quay('guide') }), 0);
});
