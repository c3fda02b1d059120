import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

// A kite 2 m ahead that flies 2 m aside: 45° by the tangent of 1.
const aside = { id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 };
const asked = { kind: 'aims-at', bone: 'vane', target: { bone: 'kite' }, allowed: 1 };
const quay = (links: object[]) => rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0], { links })]);

test('a vane that watches points at the kite; one that does not is 45° off', () => {
  const exercise = exerciseOf(quay([]), [aside], asked);
  expectMissed(found(exercise), 45);
  expectMet(found(exercise, { rig: quay([{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }]) }), 0);
});
