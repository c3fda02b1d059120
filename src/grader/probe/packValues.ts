import { POSE_STRIDE, type Program, restPose } from '../../solver/index.ts';
import { orderCode, turnByAngles } from '../../solver/pose/turnByAngles.ts';
import { type BoundInput, settable } from './boundInput.ts';

const TURN = 3;
const SIZE = 7;
const CHANNEL_AT = { move: 0, turn: SIZE, size: SIZE } as const;

/** A packed pose, and the input values that stand in it. */
export interface PackedValues {
  readonly values: Float64Array;
  /** The pose, and behind it room for three angles. */
  readonly packed: Float64Array;
}

/** Writes input values into a packed pose, without allocating: the same bits as packing the pose document. */
export interface Packer {
  /** Room for a pose, in which no values stand yet. */
  room(): PackedValues;
  /** Writes what differs from the values that stand there. Whoever writes there as well puts it back. */
  pack(values: Float64Array, into: PackedValues): void;
}

export function packerFor(program: Program, inputs: readonly BoundInput[]): Packer {
  const rest = restPose(program);
  const anglesAt = rest.length;
  const turned = turnedBones(program, inputs);
  const direct = directOnes(program, inputs);
  return {
    room() {
      const packed = new Float64Array(rest.length + 3);
      packed.set(rest);
      return { values: new Float64Array(inputs.length).fill(Number.NaN), packed };
    },
    pack(values, { values: before, packed }) {
      for (let i = 0; i < direct.length; i++) {
        const { input, index, at } = direct[i]!;
        if (values[index] !== before[index]) packed[at] = settable(input, values[index]!);
      }
      for (let i = 0; i < turned.length; i++) {
        const { at, order, indices } = turned[i]!;
        if (isSame(values, before, indices)) continue;
        for (let k = 0; k < 3; k++) packed[anglesAt + k] = indices[k]! < 0 ? 0 : values[indices[k]!]!;
        for (let k = TURN; k < SIZE; k++) packed[at + k] = rest[at + k]!;
        turnByAngles(packed, at + TURN, anglesAt, order);
      }
      before.set(values);
    },
  };
}

function isSame(values: Float64Array, before: Float64Array, indices: readonly number[]): boolean {
  for (let k = 0; k < 3; k++) if (indices[k]! >= 0 && values[indices[k]!] !== before[indices[k]!]) return false;
  return true;
}

/** Inputs that are one number of the pose each; of several on one channel the last. */
function directOnes(program: Program, inputs: readonly BoundInput[]) {
  const places = new Map<number, { input: BoundInput; index: number; at: number }>();
  inputs.forEach((input, index) => {
    if (input.stuck || input.channel === 'turn') return;
    const at = placeOf(program, input);
    places.set(at, { input, index, at });
  });
  return [...places.values()];
}

function placeOf(program: Program, input: BoundInput): number {
  if (input.switch !== null) {
    return POSE_STRIDE * program.boneNames.length + program.switchNames.indexOf(input.switch);
  }
  const bone = program.boneIndex.get(input.bone!)!;
  return POSE_STRIDE * bone + CHANNEL_AT[input.channel as 'move' | 'size'] + input.component;
}

/** Bones that inputs turn, each with the input of each of its angles; −1 where none turns it. */
function turnedBones(program: Program, inputs: readonly BoundInput[]) {
  const bones = new Map<string, { at: number; order: number; indices: number[] }>();
  inputs.forEach((input, index) => {
    if (input.channel !== 'turn' || input.stuck) return;
    const bone = program.boneIndex.get(input.bone!)!;
    const order = orderCode(program.rig.bones[bone]!.turnOrder);
    const turned = bones.get(input.bone!) ?? { at: POSE_STRIDE * bone, order, indices: [-1, -1, -1] };
    turned.indices[input.component] = index;
    bones.set(input.bone!, turned);
  });
  return [...bones.values()];
}
