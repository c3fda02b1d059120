import { courseEdition, editionOf } from '../../course/edition.ts';
import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import type { Assignment } from './assignment.ts';
import { readAssignment } from './readAssignment.ts';

/** What an instructor decides; the rest of an assignment follows from it and from the course. */
export type Plan = Omit<Assignment, 'format' | 'version' | 'edition' | 'key' | 'carried'>;

/**
 * An assignment that carries the exercises of a plan as the course has them now.
 * @param definitionOf null where the course has no such exercise; then the assignment is refused, naming the place
 */
export function makeAssignment(
  plan: Plan,
  definitionOf: (id: string) => ExerciseDefinition | null,
): Reading<Assignment> {
  const ids = Array.isArray(plan.exercises) ? plan.exercises.map(({ id }) => id) : [];
  const definitions = ids.flatMap((id) => definitionOf(id) ?? []);
  const carried = definitions.map((definition) => ({ definition, edition: editionOf(definition) }));
  return readAssignment({
    format: 'counterpose/assignment',
    version: 1,
    ...plan,
    edition: courseEdition(carried.map(({ edition }) => edition)),
    carried,
  });
}
