import { describe, expect, test } from 'vitest';
import type { Pose, Rig } from '../../../src/solver/index.ts';
import { probePoses } from '../../../src/workbench/desk/probePoses.ts';
import { poseAt } from '../../../src/workbench/play/strip.ts';
import { exerciseFor } from '../../support/exercises.ts';

const rest = { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 0.1 } as const;
const rig: Rig = {
  format: 'counterpose/rig',
  version: 1,
  bones: [
    {
      name: 'grip',
      parent: null,
      role: 'control',
      rest,
      switches: [
        { name: 'open', min: 0, max: 1, default: 0, sliding: true },
        { name: 'lit', min: 0, max: 1, default: 1 },
      ],
    },
  ],
};
const keys: Pose[] = [
  {},
  {
    bones: { grip: { move: [0.2, 0, 0], turn: { angles: [0, 40, 0] }, size: [2, 1, 1] } },
    switches: { 'grip.open': 1, 'grip.lit': 0 },
  },
];
const strip = { poses: keys, seconds: 1, moves: true };

describe('a strip of poses', () => {
  test('goes in proportion from key to key; what a key leaves out is at rest', () => {
    const { bones, switches } = poseAt(strip, 0.25, rig);
    expect(bones!.grip).toEqual({ move: [0.05, 0, 0], turn: { angles: [0, 10, 0] }, size: [1.25, 1, 1] });
    expect(switches).toEqual({ 'grip.open': 0.25, 'grip.lit': 1 });
  });

  test('a switch that does not slide changes half way', () => {
    expect([0.4, 0.6].map((place) => poseAt(strip, place, rig).switches!['grip.lit'])).toEqual([1, 0]);
  });

  test('stands at its poses, and stays within its ends', () => {
    expect([0, 1, -3, 9].map((place) => poseAt(strip, place, rig))).toEqual([keys[0], keys[1], keys[0], keys[1]]);
    expect(poseAt({ ...strip, moves: false }, 0.9, rig)).toBe(keys[0]);
  });
});

test('the probes of a rig are its ladder, rest first, each pose once', () => {
  const exercise = exerciseFor('one-vane');
  const poses = probePoses(exercise, exercise.references[0]!.rig, {});
  expect(poses[0]).toEqual({});
  expect(poses.length).toBeGreaterThan(20);
  expect(new Set(poses.map((pose) => JSON.stringify(pose))).size).toBe(poses.length);
});
