/**
 * The same rig and pose with every place and turn off by about 1e-13: far more than rounding, far less than any of the
 * format's thresholds. Where the oracle itself answers such a nudge, two readings may part without either being wrong.
 * Sizes of zero stay zero, and what a document counts by (weights, bounds, keys) stays as written.
 */
import type { Bone, BonePose, Pose, Rig } from '../../src/solver/document/rig.ts';
import type { Random } from '../support/random.ts';

const BY = 1e-13;
const ANGLE_BY_DEG = 1e-11;

type Nudge = (x: number) => number;
type Nudges = Record<'place' | 'angle' | 'proportion', Nudge>;

const everywhere = <T extends readonly number[]>(list: T, nudge: Nudge): T => list.map(nudge) as unknown as T;

export function jittered(rig: Rig, pose: Pose, random: Random): { rig: Rig; pose: Pose } {
  const place: Nudge = (x) => x + (2 * random() - 1) * BY * Math.max(1, Math.abs(x));
  const angle: Nudge = (x) => x + (2 * random() - 1) * ANGLE_BY_DEG;
  const proportion: Nudge = (x) => x * (1 + (2 * random() - 1) * BY);
  const bones = rig.bones.map((bone) => jitteredBone(bone, { place, angle, proportion }));
  const posed = Object.entries(pose.bones ?? {}).map(([name, one]) => [
    name,
    jitteredPose(one, { place, angle, proportion }),
  ]);
  return { rig: { ...rig, bones }, pose: { ...pose, bones: Object.fromEntries(posed) } };
}

function jitteredBone(bone: Bone, { place, proportion }: Nudges): Bone {
  const { base, turn, length } = bone.rest;
  return {
    ...bone,
    rest: { base: everywhere(base, place), turn: everywhere(turn, place), length: proportion(length) },
  };
}

function jitteredPose({ move, turn, size }: BonePose, { place, angle, proportion }: Nudges): BonePose {
  return {
    ...(move && { move: everywhere(move, place) }),
    ...(turn && { turn: 'angles' in turn ? { angles: everywhere(turn.angles, angle) } : everywhere(turn, place) }),
    ...(size && { size: everywhere(size, proportion) }),
  };
}
