import { POSE_STRIDE, type Program } from '../program.ts';

/** The packed pose in which every bone is at rest and every switch at its default. */
export function restPose(program: Program): Float64Array {
  const pose = new Float64Array(program.poseLength);
  writeRest(program, pose);
  return pose;
}

/** Writes that pose to the start of an array. */
export function writeRest({ rig }: Program, into: Float64Array): void {
  const bones = POSE_STRIDE * rig.bones.length;
  for (let at = 0; at < bones; at += POSE_STRIDE) {
    into.fill(0, at, at + 6);
    into.fill(1, at + 6, at + POSE_STRIDE);
  }
  let at = bones;
  for (const bone of rig.bones) for (const own of bone.switches ?? []) into[at++] = own.default;
}
