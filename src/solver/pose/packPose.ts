import type { Bone, BonePose, Pose } from '../document/rig.ts';
import { POSE_STRIDE, type Program } from '../program.ts';
import { writeRest } from './restPose.ts';
import { orderCode, turnByAngles } from './turnByAngles.ts';

const TURN = 3;
const SIZE = 7;

/**
 * Packs a pose that was read without refusal: of each bone, in document order, move x y z (metres), turn x y z w (a unit
 * quaternion), size x y z; then the switches. What the pose leaves out is at rest, or at its default. Writes to the
 * start of `into` if given, and returns it.
 */
export function packPose(program: Program, pose: Pose, into = new Float64Array(program.poseLength)): Float64Array {
  writeRest(program, into);
  for (const [name, own] of Object.entries(pose.bones ?? {})) {
    const bone = program.boneIndex.get(name);
    if (bone !== undefined) packBone(program.rig.bones[bone], own, into, POSE_STRIDE * bone);
  }
  const switches = pose.switches ?? {};
  program.switchNames.forEach((name, i) => {
    if (Object.hasOwn(switches, name)) into[POSE_STRIDE * program.boneNames.length + i] = switches[name];
  });
  return into;
}

function packBone(bone: Bone, { move, turn, size }: BonePose, into: Float64Array, at: number): void {
  if (move) into.set(move, at);
  if (turn && 'angles' in turn) packAngles(bone, turn.angles, into, at);
  else if (turn) packQuaternion(turn, into, at + TURN);
  if (size) into.set(size, at + SIZE);
}

/** The size, which is written after the turn, lends its place to the angles. */
function packAngles(bone: Bone, angles: readonly number[], into: Float64Array, at: number): void {
  into.set(angles, at + SIZE);
  turnByAngles(into, at + TURN, at + SIZE, orderCode(bone.turnOrder));
  into.fill(1, at + SIZE, at + POSE_STRIDE);
}

/** Made a unit quaternion to the last bit: a document may be off by 1e-6. */
function packQuaternion([x, y, z, w]: readonly number[], into: Float64Array, at: number): void {
  const length = Math.sqrt(x * x + y * y + z * z + w * w);
  into.set([x / length, y / length, z / length, w / length], at);
}
