import type { Axis } from '../../solver/document/rig.ts';
import { needed, optional } from '../../solver/document/structures.ts';
import { axis as axisReader } from '../../solver/document/vectors.ts';
import type { Where } from '../exercise/definition.ts';
import { angleBetweenDeg, axisOf, pointOf } from '../measure/frame.ts';
import { lengthOf, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { reflectedAxis } from './reflectedAxis.ts';
import { type RequirementBase, requirementReader, spoken, where } from './requirement.ts';

export interface AimsAt extends RequirementBase {
  kind: 'aims-at';
  bone: string;
  /** Default +z. */
  axis?: Axis;
  target: Where;
}

/** Degrees between an axis of the bone and the direction from its base to the target; 0 while they coincide. */
export const aimsAt: BehaviourKind<AimsAt> = {
  kind: 'aims-at',
  about: 'behaviour',
  read: requirementReader<AimsAt>('aims-at', {
    bone: needed(spoken),
    axis: optional(axisReader),
    target: needed(where),
  }),
  unit: () => 'degrees',
  bones: ({ bone, target }) => [bone, target.bone],
  inputs: () => [],
  missed: ({ bone, target }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} points ${measured} away from ${nameOf(target.bone)}; ${allowed} is allowed.`,
  reflected: reflectedAxis,
  meter({ bone, axis = '+z', target }, subject) {
    const self = worldOffset(subject, bone);
    const length = lengthOf(subject, target.bone);
    const other = worldOffset(subject, target.bone);
    const pointing = new Float64Array(3);
    const toward = new Float64Array(3);
    return (values) => {
      const world = worldAt(subject, values);
      axisOf(world, self, axis, pointing);
      pointOf(world, other, (target.at ?? 0) * length, toward);
      for (let i = 0; i < 3; i++) toward[i] = toward[i]! - world[self + 9 + i]!;
      return angleBetweenDeg(pointing, toward);
    };
  },
};
