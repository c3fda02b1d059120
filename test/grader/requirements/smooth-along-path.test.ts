import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [
  { id: 'aside', bone: 'kite', channel: 'move.x', min: -2, max: 2 },
  { id: 'up', bone: 'kite', channel: 'move.y', min: 0, max: 1 },
];
const quay = rigOf([
  bone('kite', null, [0, 0, 2]),
  bone('vane', null, [0, 0, 0], { links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }] }),
]);
const asked = (steps: number, more: object = {}) => ({
  kind: 'smooth-along-path',
  bone: 'vane',
  by: 'turn',
  path: [{}, { aside: 2 }],
  steps,
  allowed: 30,
  ...more,
});

test('to 2 m aside in one step are 45°; in two, the first is 26.565°, the arctangent of ½', () => {
  expectMissed(found(exerciseOf(quay, inputs, asked(1))), 45);
  expectMet(found(exerciseOf(quay, inputs, asked(2))), 26.5651);
});

test('the first key is where the motion begins, not a step', () => {
  const path = [{ aside: 2 }, { aside: 2 }];
  expectMet(found(exerciseOf(quay, inputs, asked(1, { path }))), 0);
});

test('the same is measured in the exercise mirrored and at another size', () => {
  const reflected = { structures: [{ id: 'mirrored', says: 'mirrored', reflect: true }], sizes: [2] };
  expectMissed(found(exerciseOf(quay, inputs, asked(1, { path: [{}, { aside: 2, up: 0 }] }), reflected)), 45);
});

test('inputs that are held stay held', () => {
  expectMet(found(exerciseOf(quay, inputs, asked(1, { at: { aside: 0 } }))), 0);
});
