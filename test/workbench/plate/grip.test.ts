import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Rig, Vec3 } from '../../../src/solver/index.ts';
import { frameAt } from '../../../src/workbench/plate/frame.ts';
import { poseGrip } from '../../../src/workbench/plate/grip.ts';
import { coordinatesIn } from '../../../src/workbench/plate/restFrame.ts';
import { minus, scaled } from '../../../src/workbench/plate/vector.ts';
import { withValues } from '../../../src/workbench/pose/channels.ts';
import { ready, solved } from '../../../src/workbench/pose/solved.ts';

const half = Math.SQRT1_2;
/** A boom on a crane that is turned and stretched, and a hook that takes of it what `inherits` says. */
const crane = (inherits: 'all' | 'uniform' | 'turn'): Rig => ({
  format: 'counterpose/rig',
  version: 1,
  bones: [
    { name: 'boom', parent: null, role: 'control', rest: { base: [0, 2, 0], turn: [half, 0, 0, half], length: 3 } },
    {
      name: 'hook',
      parent: 'boom',
      role: 'control',
      inherits,
      turnOrder: 'yzx',
      rest: { base: [0.5, 2, 3], turn: [0, half, 0, half], length: 0.2 },
    },
  ],
});
const boomed = {
  bones: {
    boom: { turn: { angles: [20, -50, 35] as Vec3 }, size: [1.5, 0.8, 2] as Vec3, move: [0.2, 0, -0.4] as Vec3 },
  },
};
const metres = fc.double({ min: -2, max: 2, noNaN: true });

test.each(['all', 'uniform', 'turn'] as const)(
  'a handle’s rails are the ways that a move really goes, inheriting %s',
  (inherits) => {
    const rig = crane(inherits);
    const made = ready(rig);
    if (!made.ok) throw new Error('the crane has a cycle');
    const hook = rig.bones[1]!;
    const baseOf = (move: Vec3) => frameAt(solved(made.ready, withValues(boomed, hook, 'move', move)).world, 1).base;
    const grip = poseGrip(solved(made.ready, boomed), boomed, hook);
    fc.assert(
      fc.property(metres, metres, metres, (x, y, z) => {
        const gone = minus(baseOf([x, y, z]), baseOf([0, 0, 0]));
        const told = coordinatesIn(grip.move.axes, gone);
        for (const [i, value] of [x, y, z].entries()) expect(told[i]).toBeCloseTo(value, 9);
      }),
    );
  },
);

test('a protractor’s axis is the one that a small turn really goes about', () => {
  const rig = crane('turn');
  const made = ready(rig);
  if (!made.ok) throw new Error('the crane has a cycle');
  const hook = rig.bones[1]!;
  const angles: Vec3 = [25, -40, 60];
  const pose = withValues(boomed, hook, 'turn', angles);
  const { turn } = poseGrip(solved(made.ready, pose), pose, hook);
  const step = 1e-4;
  for (const i of [0, 1, 2] as const) {
    const more = withValues(pose, hook, 'turn', angles.with(i, angles[i] + step) as unknown as Vec3);
    const [before, after] = [pose, more].map((each) => frameAt(solved(made.ready, each).world, 1));
    const radians = (step * Math.PI) / 180;
    for (const axis of ['x', 'y', 'z'] as const) {
      const rate = scaled(minus(after![axis], before![axis]), 1 / radians);
      const about = turn.axes[i];
      const own = before![axis];
      const expected = [
        about[1] * own[2] - about[2] * own[1],
        about[2] * own[0] - about[0] * own[2],
        about[0] * own[1] - about[1] * own[0],
      ];
      for (const k of [0, 1, 2]) expect(rate[k]).toBeCloseTo(expected[k]!, 4);
    }
  }
});
