import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

// 45° about y under a parent twice as long in z: x axis (c, 0, −2c), z axis (c, 0, 2c); the cosine between them is −0.6.
const turn = [0, 0.3826834323650898, 0, 0.9238795325112867];
const inputs = [{ id: 'longer', bone: 'post', channel: 'size.z', min: 1, max: 2 }];
const asked = { kind: 'no-shear', bones: ['vane'], allowed: 1 };
const quay = (more: object) =>
  rigOf([
    bone('post', null, [0, 0, 0]),
    bone('vane', 'post', [0, 0, 0], { rest: { base: [0, 0, 0], turn, length: 0.5 }, ...more }),
  ]);

test('a vane askew under a stretched post is 36.87° out of square, and square where it takes the turn alone', () => {
  const exercise = exerciseOf(quay({}), inputs, asked);
  expectMissed(found(exercise), 36.8699);
  expectMet(found(exercise, { rig: quay({ inherits: 'turn' }) }), 0);
});
