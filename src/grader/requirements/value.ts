import type { Reader } from '../../solver/document/reader.ts';
import type { Pose } from '../../solver/document/rig.ts';
import { needed, optional } from '../../solver/document/structures.ts';
import { readPose, reflectPoseValues } from '../../solver/index.ts';
import type { Exercise } from '../exercise/exercise.ts';
import { type Gauge, gaugeOf, gaugeUnit, readGauge, reflectGauge } from '../responses/gauge.ts';
import { subjectOf, worldOf } from '../subject.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface ValueAsked extends RequirementBase {
  kind: 'value';
  gauge: Gauge;
  /** The pose in which it is asked; rest where none is given. */
  pose?: Pose;
}

const anyPose: Reader<Pose> = (value) => value as Pose;

/** How far a predicted number is from what the rig gives. */
export const value: StructureKind<ValueAsked> = {
  kind: 'value',
  about: 'structure',
  read: requirementReader<ValueAsked>('value', { gauge: needed(readGauge), pose: optional(anyPose) }),
  unit: ({ gauge }) => gaugeUnit(gauge),
  bones: () => [],
  inputs: () => [],
  reflected: (requirement) => ({
    ...requirement,
    gauge: reflectGauge(requirement.gauge),
    ...(requirement.pose && { pose: reflectPoseValues(requirement.pose) }),
  }),
  scaled: (requirement, factor) => ({
    ...requirement,
    allowed: gaugeUnit(requirement.gauge) === 'cm' ? requirement.allowed * factor : requirement.allowed,
    ...(requirement.pose && { pose: scalePose(requirement.pose, factor) }),
  }),
  missed: (_, { measured, allowed }) => `Off by ${measured}; ${allowed} is allowed.`,
  inspect(requirement, { exercise, values }) {
    const said = values?.[requirement.id] ?? Number.POSITIVE_INFINITY;
    const off = said - truthOf(requirement, exercise);
    return { measured: Math.abs(off), places: [], profile: [off] };
  },
};

function scalePose(pose: Pose, factor: number): Pose {
  const bones = Object.entries(pose.bones ?? {}).map(([name, { move, ...rest }]) => {
    return [name, move ? { ...rest, move: move.map((x) => x * factor) } : rest];
  });
  return { ...pose, bones: Object.fromEntries(bones) };
}

/** What the rig of the exercise gives. Throws where its content is at fault. */
export function truthOf({ id, gauge, pose = {} }: ValueAsked, exercise: Exercise): number {
  const prepared = subjectOf(exercise, exercise.start);
  if (!prepared.ok) throw new Error(`${exercise.id}: ${id} asks of a rig that cannot be evaluated`);
  const reading = readPose(pose, exercise.start);
  if (!reading.ok) {
    const { place, found, expected } = reading.refusal;
    throw new Error(`${exercise.id}: the pose of ${id}, at "${place}": found ${found}, expected ${expected}`);
  }
  worldOf(prepared.subject, reading.value);
  return gaugeOf(gauge, prepared.subject);
}
