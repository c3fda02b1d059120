import { splitSwitch } from '../../solver/document/renaming.ts';
import { type Program, swapSide } from '../../solver/index.ts';
import type { BoundInput } from './boundInput.ts';
import { packerFor } from './packValues.ts';

/**
 * Packs the pose across x = 0 of the one that the inputs make, as `reflectPose` does with documents: each input's value
 * goes to the other side, angles as angles, so that two sides that turn in another order are told apart. What has no other
 * side on the rig goes to nobody. The array returned is overwritten by the next call.
 */
export function reflectedPacker(
  program: Program,
  inputs: readonly BoundInput[],
): (values: Float64Array) => Float64Array {
  const across = inputs.map((input) => acrossOf(program, input));
  const packer = packerFor(program, across);
  const room = packer.room();
  const signs = inputs.map((input) => (isOpposite(input) ? -1 : 1));
  const reflected = new Float64Array(inputs.length);
  return (values) => {
    for (let i = 0; i < reflected.length; i++) reflected[i] = signs[i]! < 0 ? 0 - values[i]! : values[i]!;
    packer.pack(reflected, room);
    return room.packed;
  };
}

/** Moves along x and turns about y and z change their sign in a mirrored frame. */
const isOpposite = ({ channel, component }: BoundInput): boolean =>
  (channel === 'move' && component === 0) || (channel === 'turn' && component > 0);

function acrossOf(program: Program, input: BoundInput): BoundInput {
  const bone = input.bone === null ? null : swapSide(input.bone);
  const own = input.switch === null ? null : otherSwitch(input.switch);
  const isThere = own === null ? program.boneIndex.has(bone!) : program.switchNames.includes(own);
  return { ...input, bone, switch: own, stuck: isThere ? input.stuck : 'unbound' };
}

function otherSwitch(reference: string): string {
  const [bone, name] = splitSwitch(reference);
  return `${swapSide(bone)}.${name}`;
}
