import type { Axis } from '../../solver/document/rig.ts';
import { needed, optional } from '../../solver/document/structures.ts';
import { axis as axisReader } from '../../solver/document/vectors.ts';
import type { Where } from '../exercise/inputs.ts';
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
  /** The point that the direction is taken from; default the bone's own base. */
  from?: Where;
}

/**
 * Degrees between an axis of the bone and the direction from its base, or from another point, to the target; 0 while
 * they coincide. From another point the bone does not look at the target but in parallel with the line to it.
 */
export const aimsAt: BehaviourKind<AimsAt> = {
  kind: 'aims-at',
  about: 'behaviour',
  read: requirementReader<AimsAt>('aims-at', {
    bone: needed(spoken),
    axis: optional(axisReader),
    target: needed(where),
    from: optional(where),
  }),
  unit: () => 'degrees',
  bones: ({ bone, target, from }) => [bone, target.bone, ...(from ? [from.bone] : [])],
  inputs: () => [],
  missed: ({ bone, target, from }, { measured, allowed, nameOf }) => {
    const way = from ? `the line from ${nameOf(from.bone)} to ${nameOf(target.bone)}` : nameOf(target.bone);
    return `${nameOf(bone)} points ${measured} away from ${way}; ${allowed} is allowed.`;
  },
  reflected: reflectedAxis,
  meter({ bone, axis = '+z', target, from = { bone } }, subject) {
    const self = worldOffset(subject, bone);
    const [targetLength, fromLength] = [lengthOf(subject, target.bone), lengthOf(subject, from.bone)];
    const [targetAt, fromAt] = [worldOffset(subject, target.bone), worldOffset(subject, from.bone)];
    const seenFrom = new Float64Array(3);
    const pointing = new Float64Array(3);
    const toward = new Float64Array(3);
    return (values) => {
      const world = worldAt(subject, values);
      axisOf(world, self, axis, pointing);
      pointOf(world, targetAt, (target.at ?? 0) * targetLength, toward);
      pointOf(world, fromAt, (from.at ?? 0) * fromLength, seenFrom);
      for (let i = 0; i < 3; i++) toward[i] = toward[i]! - seenFrom[i]!;
      return angleBetweenDeg(pointing, toward);
    };
  },
};
