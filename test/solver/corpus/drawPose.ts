/** A pose by seed: quarter turns, sizes that are zero or negative, and anything between. */
import type { BonePose, Pose, Rig, Switch, Vec3 } from '../../../src/solver/document/rig.ts';
import { type Draw, drawBySeed, perhaps } from './draw.ts';
import { gridVector, turn, vector } from './geometry.ts';

const poseTurn = (draw: Draw, round: number): NonNullable<BonePose['turn']> => {
  if (draw.often(0.5)) return turn(draw, round);
  if (!draw.often(round)) return { angles: vector(draw, 180) };
  return { angles: [draw.one([0, 90, 180]), draw.one([0, -90, 180]), draw.one([0, 90, -180])] };
};

function poseSize(draw: Draw): Vec3 {
  if (draw.often(0.2)) return [draw.one([0, 1]), draw.one([0, 1, -1]), draw.one([0, 1])];
  if (draw.often(0.4))
    return draw.one<Vec3>([
      [2, 2, 2],
      [0.5, 0.5, 0.5],
      [-1, 1, 1],
      [1, 1, -2],
    ]);
  return [draw.real(0.4, 1.8), draw.real(0.4, 1.8), draw.real(0.4, 1.8)];
}

const bonePose = (draw: Draw, sized: number, round: number): BonePose => ({
  ...perhaps(draw, 0.5, 'move', () => (draw.often(0.4) ? gridVector(draw, 2) : vector(draw, 0.4))),
  ...perhaps(draw, 0.7, 'turn', () => poseTurn(draw, round)),
  ...perhaps(draw, sized, 'size', () => poseSize(draw)),
});

const switchValue = (draw: Draw, { min, max, sliding }: Switch): number =>
  sliding ? draw.one([min, max, draw.real(min, max)]) : draw.one([min, max]);

/** `round` is how often turns are round, 0 to 1. */
export function drawPose(rig: Rig, seed: number, round = 0.4): Pose {
  const draw = drawBySeed(seed);
  const sized = draw.one([0, 0, 0.1, 0.5]);
  const bones: Record<string, BonePose> = {};
  const switches: Record<string, number> = {};
  for (const bone of rig.bones) {
    if (draw.often(0.7)) bones[bone.name] = bonePose(draw, sized, round);
    for (const own of bone.switches ?? []) {
      if (draw.often(0.8)) switches[`${bone.name}.${own.name}`] = switchValue(draw, own);
    }
  }
  return { bones, switches };
}
