import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const quay = (post: string, vane: string) =>
  rigOf([bone('post', null, [0, 0, 0], { role: post }), bone('vane', null, [0, 1, 0], { role: vane })]);

test('a bone that pulls and should not, and one that no longer does', () => {
  const exercise = exerciseOf(quay('skin', 'helper'), [], { kind: 'skin-as-given', also: [], allowed: 0 });
  expectMet(found(exercise), 0);
  expectMissed(found(exercise, { rig: quay('skin', 'skin') }), 1);
  expectMissed(found(exercise, { rig: quay('helper', 'skin') }), 2);
});
