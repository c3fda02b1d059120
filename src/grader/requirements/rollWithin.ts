import type { Axis } from '../../solver/document/rig.ts';
import { needed, optional } from '../../solver/document/structures.ts';
import { axis as axisReader } from '../../solver/document/vectors.ts';
import { angleBetweenDeg, axisOf } from '../measure/frame.ts';
import { worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { opposedX } from './reflectedAxis.ts';
import { type RequirementBase, requirementReader, spoken } from './requirement.ts';

export interface RollWithin extends RequirementBase {
  kind: 'roll-within';
  bone: string;
  /** The axis about which it may roll; default +z. */
  axis?: Axis;
  /** The axis that should keep to one of another bone, seen along the first; default +y. */
  up?: Axis;
  toward: string;
  towardAxis?: Axis;
}

/** Degrees between the bone's up axis and an axis of another bone, both seen along the bone's own axis. */
export const rollWithin: BehaviourKind<RollWithin> = {
  kind: 'roll-within',
  about: 'behaviour',
  read: requirementReader<RollWithin>('roll-within', {
    bone: needed(spoken),
    axis: optional(axisReader),
    up: optional(axisReader),
    toward: needed(spoken),
    towardAxis: optional(axisReader),
  }),
  unit: () => 'degrees',
  bones: ({ bone, toward }) => [bone, toward],
  inputs: () => [],
  missed: ({ bone }, { measured, allowed, nameOf }) => `${nameOf(bone)} rolls by ${measured}; ${allowed} is allowed.`,
  reflected: (requirement) => {
    const { axis, up, towardAxis } = requirement;
    return {
      ...requirement,
      ...(axis && { axis: opposedX(axis) }),
      ...(up && { up: opposedX(up) }),
      ...(towardAxis && { towardAxis: opposedX(towardAxis) }),
    };
  },
  meter({ bone, axis = '+z', up = '+y', toward, towardAxis = '+y' }, subject) {
    const self = worldOffset(subject, bone);
    const other = worldOffset(subject, toward);
    const [along, ownUp, wantedUp] = [new Float64Array(3), new Float64Array(3), new Float64Array(3)];
    return (values) => {
      const world = worldAt(subject, values);
      axisOf(world, self, axis, along);
      axisOf(world, self, up, ownUp);
      axisOf(world, other, towardAxis, wantedUp);
      flatten(ownUp, along);
      flatten(wantedUp, along);
      return angleBetweenDeg(ownUp, wantedUp);
    };
  },
};

/** Takes away what lies along a unit vector. */
function flatten(v: Float64Array, along: Float64Array): void {
  const dot = v[0]! * along[0]! + v[1]! * along[1]! + v[2]! * along[2]!;
  for (let i = 0; i < 3; i++) v[i] = v[i]! - dot * along[i]!;
}
