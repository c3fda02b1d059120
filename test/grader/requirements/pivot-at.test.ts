import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const otter = (x: number) => rigOf([bone('ball', null, [0, 0, 0]), bone('eye', null, [x, 0, 0.5])]);

test('an eye that turns about a point 30 mm beside the tip of the ball', () => {
  const exercise = exerciseOf(otter(0.03), [], {
    kind: 'pivot-at',
    bone: 'eye',
    point: { bone: 'ball', at: 1 },
    allowed: 1,
  });
  expectMissed(found(exercise), 30);
  expectMet(found(exercise, { rig: otter(0) }), 0);
});
