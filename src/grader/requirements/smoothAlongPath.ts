import { dictionary, list, needed, optional } from '../../solver/document/structures.ts';
import { finite, numberFrom } from '../../solver/document/values.ts';
import type { Values } from '../exercise/held.ts';
import { restValues } from '../probe/boundInput.ts';
import { type Subject, worldAt } from '../subject.ts';
import { distanceMeter } from './change.ts';
import type { BehaviourKind } from './kind.ts';
import { type By, by, type RequirementBase, requirementReader, spoken, unitOf } from './requirement.ts';

export interface SmoothAlongPath extends RequirementBase {
  kind: 'smooth-along-path';
  bone: string;
  by: By;
  /** Values of inputs at each key of the motion; one that a key leaves out is at rest, or held. Straight in between. */
  path: readonly Values[];
  /** Into how many steps each stretch between two keys is cut; default 16. */
  steps?: number;
}

const stepsOf = ({ steps = 16 }: SmoothAlongPath) => steps;

/** The largest change of the bone from one step of a given motion to the next. */
export const smoothAlongPath: BehaviourKind<SmoothAlongPath> = {
  kind: 'smooth-along-path',
  about: 'behaviour',
  read: requirementReader<SmoothAlongPath>('smooth-along-path', {
    bone: needed(spoken),
    by: needed(by),
    path: needed(
      list(
        'keys',
        dictionary('values of inputs', () => finite),
        { least: 2 },
      ),
    ),
    steps: optional(numberFrom(1, 64)),
  }),
  unit: unitOf,
  bones: ({ bone }) => [bone],
  inputs: ({ path }) => [...new Set(path.flatMap((key) => Object.keys(key)))],
  withValues: (requirement, change) => ({ ...requirement, path: requirement.path.map(change) }),
  missed: ({ bone }, { measured, allowed, nameOf }) =>
    `Along the motion ${nameOf(bone)} goes ${measured} in one step; ${allowed} is allowed.`,
  meter(requirement, subject) {
    const poses = posesAlong(requirement, subject);
    const distance = distanceMeter(subject, requirement.bone, requirement.by);
    return (values) => {
      const at = poses.findIndex((pose) => pose.every((value, i) => value === values[i]));
      if (at < 1) return 0;
      return distance(worldAt(subject, poses[at - 1]!), worldAt(subject, values));
    };
  },
  probes: posesAlong,
};

/** Every step of the motion, its first key too. */
function posesAlong(requirement: SmoothAlongPath, subject: Subject): Float64Array[] {
  const keys = requirement.path.map((key) => poseOf({ ...key, ...requirement.at }, subject));
  const steps = stepsOf(requirement);
  const between = keys.slice(1).flatMap((to, i) =>
    Array.from({ length: steps }, (_, step) => {
      const share = (step + 1) / steps;
      return keys[i]!.map((from, index) => from + (to[index]! - from) * share);
    }),
  );
  return [keys[0]!, ...between];
}

function poseOf(key: Values, subject: Subject): Float64Array {
  const values = restValues(subject.inputs);
  for (const [id, value] of Object.entries(key)) values[subject.inputIndex.get(id)!] = value;
  return values;
}
