import type { Axis } from '../../solver/document/rig.ts';
import { needed, optional } from '../../solver/document/structures.ts';
import { axis as axisReader } from '../../solver/document/vectors.ts';
import { angleBetweenDeg, axisOf } from '../measure/frame.ts';
import { worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { opposedX } from './reflectedAxis.ts';
import { type RequirementBase, requirementReader, spoken } from './requirement.ts';

export interface StaysWithin extends RequirementBase {
  kind: 'stays-within';
  bone: string;
  /** Default +z. */
  axis?: Axis;
  /** The bone whose axis is the middle of the cone. */
  around: string;
  aroundAxis?: Axis;
}

/** Degrees between an axis of the bone and one of another: `allowed` is the half-angle of the cone. */
export const staysWithin: BehaviourKind<StaysWithin> = {
  kind: 'stays-within',
  about: 'behaviour',
  read: requirementReader<StaysWithin>('stays-within', {
    bone: needed(spoken),
    axis: optional(axisReader),
    around: needed(spoken),
    aroundAxis: optional(axisReader),
  }),
  unit: () => 'degrees',
  bones: ({ bone, around }) => [bone, around],
  inputs: () => [],
  missed: ({ bone, around }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} turns ${measured} away from ${nameOf(around)}; ${allowed} is the limit.`,
  reflected: (requirement) => ({
    ...requirement,
    ...(requirement.axis && { axis: opposedX(requirement.axis) }),
    ...(requirement.aroundAxis && { aroundAxis: opposedX(requirement.aroundAxis) }),
  }),
  meter({ bone, axis = '+z', around, aroundAxis = '+z' }, subject) {
    const self = worldOffset(subject, bone);
    const other = worldOffset(subject, around);
    const [own, middle] = [new Float64Array(3), new Float64Array(3)];
    return (values) => {
      const world = worldAt(subject, values);
      axisOf(world, self, axis, own);
      axisOf(world, other, aroundAxis, middle);
      return angleBetweenDeg(own, middle);
    };
  },
};
