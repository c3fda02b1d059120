import { bindParts, boneOf } from '../../grader/bind.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Pose, Rig } from '../../solver/document/rig.ts';
import type { Draft } from '../edit/draft.ts';
import { ready, type Solved, solved } from '../pose/solved.ts';

export interface Expected {
  readonly solved: Solved;
  /** The bones of the right answer that the requirement speaks of. */
  readonly bones: readonly string[];
}

/**
 * How the bones that a requirement speaks of stand in a right answer, in the same pose: the first reference, its parts
 * moved as the learner's own are. Null where the requirement speaks of no bone, or of two sides that are to mirror: what
 * they miss may be missed in the mirrored pose.
 */
export function expectedFor(exercise: Exercise, requirement: string, draft: Draft, pose: Pose): Expected | null {
  const asked = exercise.requirements.find(({ id }) => id === requirement);
  const reference = exercise.references[0];
  if (!asked || !reference) return null;
  const theirs = bindParts(exercise.parts, reference.rig, reference.parts);
  const bones = spokenBones(asked).flatMap((bone) => boneOf(bone, theirs) ?? []);
  const made = ready(reference.rig);
  if (bones.length === 0 || !made.ok) return null;
  const moved = translated(pose, bindParts(exercise.parts, draft.rig, draft.parts), theirs, reference.rig);
  return { solved: solved(made.ready, moved), bones };
}

function spokenBones(asked: Exercise['requirements'][number]): readonly string[] {
  if ('bone' in asked) return [asked.bone];
  return 'bones' in asked && asked.kind !== 'mirrors' ? asked.bones : [];
}

/** The bone of the learner's rig that a requirement speaks of. */
export function actualFor(exercise: Exercise, requirement: string, draft: Draft): string | null {
  const asked = exercise.requirements.find(({ id }) => id === requirement);
  if (!asked || !('bone' in asked)) return null;
  return boneOf(asked.bone, bindParts(exercise.parts, draft.rig, draft.parts));
}

type Binding = ReadonlyMap<string, string | null>;

/** The pose told in the other rig's names. */
function translated(pose: Pose, ours: Binding, theirs: Binding, rig: Rig): Pose {
  const names = new Map<string, string>();
  for (const [part, own] of ours) {
    const other = theirs.get(part);
    if (own !== null && other) names.set(own, other);
  }
  const renamed = <T>(record: Readonly<Record<string, T>> = {}) =>
    Object.fromEntries(Object.entries(record).map(([name, value]) => [names.get(name) ?? name, value]));
  const known = new Set(rig.bones.map(({ name }) => name));
  const bones = Object.entries(renamed(pose.bones)).filter(([name]) => known.has(name));
  return { bones: Object.fromEntries(bones), switches: renamed(pose.switches) };
}
