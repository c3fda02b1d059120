import type { Rig } from '../../solver/document/rig.ts';
import { readRig } from '../../solver/index.ts';
import type { Exercise } from '../exercise/definition.ts';
import { editRig } from '../exercise/editRig.ts';
import { EQUIVALENTS, renameFree } from './equivalents/table.ts';
import { MUTATIONS } from './mutants/table.ts';
import type { Variation } from './variation.ts';

/** A rig to be graded, with the parts that are not bound by their names. */
export interface Candidate {
  says: string;
  rig: Rig;
  parts: Readonly<Record<string, string>>;
}

type Built = Exercise['references'][number] | Exercise['wrongTurns'][number];

export function asWritten(built: Built): Candidate {
  return { says: built.id, rig: built.rig, parts: built.parts ?? {} };
}

/** The reference and every other way of writing it. */
export function rightOnes(exercise: Exercise, reference: Exercise['references'][number]): Candidate[] {
  const fixed = new Set(exercise.start.bones.map(({ name }) => name));
  const variations = [
    ...renameFree(reference.rig, fixed),
    ...Object.values(EQUIVALENTS).flatMap((vary) => vary(reference.rig)),
  ];
  return [asWritten(reference), ...readable(exercise, reference, variations)];
}

/** Every mistake made in the reference that still reads as a rig. */
export function mutantsOf(exercise: Exercise, reference: Exercise['references'][number]): Candidate[] {
  return readable(
    exercise,
    reference,
    Object.values(MUTATIONS).flatMap((vary) => vary(reference.rig)),
  );
}

/** Visible differences that the author calls right. */
export function freeOnes(exercise: Exercise): Candidate[] {
  return exercise.freeChoices.map(({ says, from, edit }) => {
    const reference = exercise.references.find(({ id }) => id === from);
    const reading = readRig(editRig(reference?.rig ?? exercise.start, edit));
    if (!reading.ok)
      throw new Error(`${exercise.id}: the free choice "${says}" is no readable rig, at ${reading.refusal.place}`);
    return { says, rig: reading.value, parts: reference?.parts ?? {} };
  });
}

function readable(exercise: Exercise, built: Built, variations: readonly Variation[]): Candidate[] {
  const seen = new Set([JSON.stringify(built.rig)]);
  return variations.flatMap(({ says, rig, renamed }) => {
    const reading = readRig(rig);
    if (!reading.ok) return [];
    const text = JSON.stringify(reading.value);
    if (seen.has(text)) return [];
    seen.add(text);
    return [{ says: `${built.id}, ${says}`, rig: reading.value, parts: boundAnew(exercise, built, renamed) }];
  });
}

/** Parts by the names they have after renaming. */
function boundAnew(exercise: Exercise, built: Built, renamed: ReadonlyMap<string, string> = new Map()) {
  const bound = exercise.parts.map((part) => {
    const [bone, own] = (built.parts?.[part.id] ?? part.name).split('.') as [string, string?];
    const name = renamed.get(bone) ?? bone;
    return [part.id, own === undefined ? name : `${name}.${own}`];
  });
  return Object.fromEntries(bound) as Record<string, string>;
}
