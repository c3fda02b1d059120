import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const asked = { kind: 'meets-at', bones: ['eye_left', 'eye_right'], point: { bone: 'kite' }, allowed: 1 };
const watch = { links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }] };
const otter = (more: object) =>
  rigOf([
    bone('kite', null, [0, 0, 1]),
    bone('eye_left', null, [0.03, 0, 0], more),
    bone('eye_right', null, [-0.03, 0, 0], more),
  ]);

test('parallel lines of gaze pass by as far as the eyes stand from the middle', () => {
  const exercise = exerciseOf(otter({}), [], asked);
  expectMissed(found(exercise), 30);
  expectMet(found(exercise, { rig: otter(watch) }), 0);
});

test('a point behind is as far as the eyes: √(30² + 1000²) mm', () => {
  const behind = { id: 'behind', bone: 'kite', channel: 'move.z', min: -2, max: 0 };
  expectMissed(found(exerciseOf(otter({}), [behind], asked)), 1000.45);
});
