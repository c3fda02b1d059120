import { splitSwitch } from '../../solver/document/renaming.ts';
import { type Program, restPose, swapSide } from '../../solver/index.ts';
import { POSE_STRIDE } from '../../solver/program.ts';

/** Signs that a bone's own pose takes across x = 0: move, turn (a quaternion), size. */
const SIGNS = [-1, 1, 1, 1, -1, -1, 1, 1, 1, 1] as const;

/**
 * A function that reflects packed poses as `reflectPose` does documents: what each bone and switch has goes to its other
 * side; a bone without one on the rig gives its pose to nobody. The array returned is overwritten by the next call.
 */
export function reflectionOf(program: Program): (packed: Float64Array) => Float64Array {
  const { boneNames, boneIndex, switchNames } = program;
  const rest = restPose(program);
  const out = new Float64Array(rest.length);
  const bones = boneNames.map((name) => boneIndex.get(swapSide(name)) ?? -1);
  const switches = switchNames.map((name) => switchNames.indexOf(otherSwitch(name)));
  const switchesAt = POSE_STRIDE * boneNames.length;
  return (packed) => {
    out.set(rest);
    bones.forEach((to, from) => {
      if (to >= 0) reflectBone(packed, POSE_STRIDE * from, out, POSE_STRIDE * to);
    });
    switches.forEach((to, from) => {
      if (to >= 0) out[switchesAt + to] = packed[switchesAt + from]!;
    });
    return out;
  };
}

function reflectBone(from: Float64Array, fromAt: number, to: Float64Array, toAt: number): void {
  for (let i = 0; i < POSE_STRIDE; i++) to[toAt + i] = SIGNS[i]! < 0 ? 0 - from[fromAt + i]! : from[fromAt + i]!;
}

/** A switch goes where its bone goes. */
function otherSwitch(reference: string): string {
  const [bone, name] = splitSwitch(reference);
  return `${swapSide(bone)}.${name}`;
}
