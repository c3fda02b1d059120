/** Sizes and lengths from a millionth to a million, nothing at all and the other way round: never NaN or Infinity. */
import { describe, expect, it } from 'vitest';
import type { Bone, BonePose, Pose, Rig, Vec3 } from '../../src/solver/document/rig.ts';
import type { SolveResult } from '../../src/solver/index.ts';
import { oracleCycle } from '../oracle/cycle.ts';
import { programOf, solved } from '../oracle/subject.ts';
import { type Draw, drawBySeed } from './corpus/draw.ts';
import { drawPose } from './corpus/drawPose.ts';
import { drawRig } from './corpus/drawRig.ts';

const RIGS = Number(process.env.COUNTERPOSE_FUZZ ?? 2000);
const LENGTHS = [1e-6, 1e-3, 1, 1e3, 1e6];
const SIZES = [...LENGTHS, 1e-9, 0, -1e-6, -1, -1e6];

function stretched(bone: Bone, draw: Draw): Bone {
  const { base, turn, length } = bone.rest;
  // A bone on its parent's tip stands where the tip is, so its parent keeps its length and both keep their place.
  if (bone.attach === 'tip')
    return { ...bone, attach: 'free', rest: { base, turn, length: length * draw.one(LENGTHS) } };
  const by = draw.one(LENGTHS);
  return {
    ...bone,
    rest: { base: base.map((x) => x * by) as unknown as Vec3, turn, length: length * draw.one(LENGTHS) },
  };
}

const stretchedRig = (rig: Rig, draw: Draw): Rig => ({ ...rig, bones: rig.bones.map((bone) => stretched(bone, draw)) });

function stretchedPose(pose: Pose, draw: Draw): Pose {
  const sized = ([name, bone]: [string, BonePose]): [string, BonePose] => {
    const size: Vec3 = [draw.one(SIZES), draw.one(SIZES), draw.one(SIZES)];
    return [name, draw.often(0.5) ? { ...bone, size } : bone];
  };
  return { ...pose, bones: Object.fromEntries(Object.entries(pose.bones ?? {}).map(sized)) };
}

const numbersOf = ({ bones, weights }: SolveResult): number[] => [
  ...Object.values(bones).flatMap(({ matrix }) => matrix),
  ...Object.values(weights),
];

describe('extreme sizes and lengths', () => {
  it('give finite numbers', { timeout: 600_000 }, () => {
    const notFinite: string[] = [];
    for (let seed = 0; seed < RIGS; seed++) {
      const draw = drawBySeed(seed);
      const rig = stretchedRig(drawRig(seed, { anyReader: seed % 3 === 0 }), draw);
      if (oracleCycle(rig)) continue;
      const result = solved(programOf(rig), stretchedPose(drawPose(rig, seed), draw));
      if (!numbersOf(result).every(Number.isFinite)) notFinite.push(`seed ${seed}`);
    }
    expect(notFinite).toEqual([]);
  });
});
