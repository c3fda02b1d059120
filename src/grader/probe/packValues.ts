import { POSE_STRIDE, type Program, restPose } from '../../solver/index.ts';
import { orderCode, turnByAngles } from '../../solver/pose/turnByAngles.ts';
import { type BoundInput, settable } from './boundInput.ts';

const TURN = 3;
const SIZE = 7;
const CHANNEL_AT = { move: 0, turn: SIZE, size: SIZE } as const;

/** Writes input values into a packed pose, without allocating: the same bits as packing the pose document. */
export interface Packer {
  readonly packed: Float64Array;
  pack(values: Float64Array): void;
}

export function packerFor(program: Program, inputs: readonly BoundInput[]): Packer {
  const rest = restPose(program);
  const anglesAt = rest.length;
  const packed = new Float64Array(rest.length + 3);
  const turned = turnedBones(program, inputs);
  const direct = inputs.flatMap((input, index) => {
    return input.stuck || input.channel === 'turn' ? [] : [{ input, index, at: placeOf(program, input) }];
  });
  return {
    packed,
    pack(values) {
      packed.set(rest);
      for (const { input, index, at } of direct) packed[at] = settable(input, values[index]!);
      for (const { at, order, angles } of turned) {
        packed.fill(0, anglesAt);
        for (const { index, component } of angles) packed[anglesAt + component] = values[index]!;
        turnByAngles(packed, at + TURN, anglesAt, order);
      }
    },
  };
}

function placeOf(program: Program, input: BoundInput): number {
  if (input.switch !== null) {
    return POSE_STRIDE * program.boneNames.length + program.switchNames.indexOf(input.switch);
  }
  const bone = program.boneIndex.get(input.bone!)!;
  return POSE_STRIDE * bone + CHANNEL_AT[input.channel as 'move' | 'size'] + input.component;
}

/** Bones that inputs turn, each with its angles. */
function turnedBones(program: Program, inputs: readonly BoundInput[]) {
  const turning = inputs.flatMap((input, index) =>
    input.channel === 'turn' && !input.stuck ? [{ input, index }] : [],
  );
  const names = [...new Set(turning.map(({ input }) => input.bone!))];
  return names.map((name) => {
    const bone = program.boneIndex.get(name)!;
    return {
      at: POSE_STRIDE * bone,
      order: orderCode(program.rig.bones[bone]!.turnOrder),
      angles: turning
        .filter(({ input }) => input.bone === name)
        .map(({ input, index }) => ({ index, component: input.component })),
    };
  });
}
