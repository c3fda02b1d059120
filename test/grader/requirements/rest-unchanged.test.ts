import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const asked = { kind: 'rest-unchanged', bones: ['vane'], by: 'turn', allowed: 1 };
const quay = (x: number) =>
  rigOf([
    bone('kite', null, [x, 0, 2]),
    bone('vane', null, [0, 0, 0], { links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }] }),
  ]);

test('a kite that is out of line at rest turns the vane by 45° as the rig opens', () => {
  const exercise = exerciseOf(quay(2), [], asked);
  expectMissed(found(exercise), 45);
  expectMet(found(exercise, { rig: quay(0) }), 0);
});
