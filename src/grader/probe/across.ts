import { splitSwitch } from '../../solver/document/renaming.ts';
import { type Program, swapSide } from '../../solver/index.ts';
import { Stands } from '../stands.ts';
import type { Subject } from '../subject.ts';
import type { BoundInput } from './boundInput.ts';
import { packerFor } from './packValues.ts';

/** The same rig in poses across x = 0 of those that the inputs make. */
export interface Across {
  worldAt(values: Float64Array): Float64Array;
}

/**
 * Poses are reflected as `reflectPose` does with documents: each input's value goes to the other side, angles as angles, so
 * that two sides that turn in another order are told apart. What has no other side on the rig goes to nobody. One for all
 * that is asked of a subject.
 */
export function acrossOf(subject: Subject): Across {
  subject.across ??= makeAcross(subject);
  return subject.across;
}

function makeAcross(subject: Subject): Across {
  const { program, inputs } = subject;
  const across = inputs.map((input) => otherSideOf(program, input));
  const stands = new Stands(program, packerFor(program, across));
  const isNegated = inputs.map(isOpposite);
  const reflected = new Float64Array(inputs.length);
  return {
    worldAt(values) {
      subject.evaluations++;
      for (let i = 0; i < reflected.length; i++) reflected[i] = isNegated[i] ? 0 - values[i]! : values[i]!;
      return stands.at(reflected).world;
    },
  };
}

/** Moves along x and turns about y and z change their sign in a mirrored frame. */
const isOpposite = ({ channel, component }: BoundInput): boolean =>
  (channel === 'move' && component === 0) || (channel === 'turn' && component > 0);

function otherSideOf(program: Program, input: BoundInput): BoundInput {
  const bone = input.bone === null ? null : swapSide(input.bone);
  const own = input.switch === null ? null : otherSwitch(input.switch);
  const isThere = own === null ? program.boneIndex.has(bone!) : program.switchNames.includes(own);
  return { ...input, bone, switch: own, stuck: isThere ? input.stuck : 'unbound' };
}

function otherSwitch(reference: string): string {
  const [bone, name] = splitSwitch(reference);
  return `${swapSide(bone)}.${name}`;
}
