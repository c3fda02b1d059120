import { needed, optional } from '../../solver/document/structures.ts';
import { numberFrom } from '../../solver/document/values.ts';
import type { Where } from '../exercise/inputs.ts';
import { pointOf } from '../measure/frame.ts';
import { lengthOf, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type RequirementBase, requirementReader, spoken, where } from './requirement.ts';

export interface SpansTo extends RequirementBase {
  kind: 'spans-to';
  bone: string;
  /** Which point of the bone: 0 its base, 1 (default) its tip. */
  end?: number;
  target: Where;
}

/** Millimetres between a bone's tip, as it is stretched, and the target. */
export const spansTo: BehaviourKind<SpansTo> = {
  kind: 'spans-to',
  about: 'behaviour',
  read: requirementReader<SpansTo>('spans-to', {
    bone: needed(spoken),
    end: optional(numberFrom(0, 1)),
    target: needed(where),
  }),
  unit: () => 'mm',
  bones: ({ bone, target }) => [bone, target.bone],
  inputs: () => [],
  missed: ({ bone, target }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} ends ${measured} away from ${nameOf(target.bone)}; ${allowed} is allowed.`,
  meter({ bone, end = 1, target }, subject) {
    const self = worldOffset(subject, bone);
    const other = worldOffset(subject, target.bone);
    const ownAlong = end * lengthOf(subject, bone);
    const otherAlong = (target.at ?? 0) * lengthOf(subject, target.bone);
    const [tip, place] = [new Float64Array(3), new Float64Array(3)];
    return (values) => {
      const world = worldAt(subject, values);
      pointOf(world, self, ownAlong, tip);
      pointOf(world, other, otherAlong, place);
      const [x, y, z] = [tip[0]! - place[0]!, tip[1]! - place[1]!, tip[2]! - place[2]!];
      return 1000 * Math.sqrt(x * x + y * y + z * z);
    };
  },
};
