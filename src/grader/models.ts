import type { Exercise } from './exercise/exercise.ts';
import { type Subject, subjectOf } from './subject.ts';

const kept = new WeakMap<Exercise, Map<string, Subject>>();

/** A reference ready to be compared with, the same for all answers. Throws where it cannot be evaluated. */
export function modelOf(exercise: Exercise, reference: string): Subject {
  const models = kept.get(exercise) ?? new Map<string, Subject>();
  kept.set(exercise, models);
  const known = models.get(reference);
  if (known) return known;
  const built = exercise.references.find(({ id }) => id === reference)!;
  const prepared = subjectOf(exercise, built.rig, built.parts);
  if (!prepared.ok) throw new Error(`${exercise.id}: the reference ${reference} cannot be evaluated`);
  models.set(reference, prepared.subject);
  return prepared.subject;
}
