import { knownWrongs } from '../../grader/diagnosis.ts';
import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';
import { type Marking, markingOf, openExercise } from '../../grader/index.ts';
import type { Assignment } from '../assignment/assignment.ts';

const MARKINGS_KEPT = 64;

/** The exercises of an assignment, each opened once a seed; the last few are kept, so memory stays bounded. */
export class Markings {
  readonly #assignment: Assignment;
  readonly #kept = new Map<string, Marking>();

  constructor(assignment: Assignment) {
    this.#assignment = assignment;
  }

  /** Null where the exercise is not assigned. */
  of(id: string, seed: number): Marking | null {
    const key = `${id}\n${seed}`;
    const known = this.#kept.get(key);
    if (known) return known;
    const assigned = this.#assignment.exercises.find((one) => one.id === id);
    const carried = this.#assignment.carried.find(({ definition }) => definition.id === id);
    if (!assigned || !carried) return null;
    const marking = assignedMarking(carried.definition, assigned.tolerances ?? {}, { edition: carried.edition, seed });
    if (this.#kept.size >= MARKINGS_KEPT) this.#kept.delete(this.#kept.keys().next().value!);
    this.#kept.set(key, marking);
    return marking;
  }
}

/** Gates are those of the exercise as it was written, and keep what they allow; the rest allows what is assigned. */
export function assignedMarking(
  definition: ExerciseDefinition,
  tolerances: Readonly<Record<string, number>>,
  about: { edition: string; seed: number },
): Marking {
  const authored = markingOf(openExercise(definition, about));
  if (Object.keys(tolerances).length === 0) return authored;
  const loosened = openExercise(withTolerances(definition, tolerances), about);
  const requirements = loosened.requirements.map((one, i) => {
    const written = authored.exercise.requirements[i]!;
    return authored.gates.has(written.id) ? written : one;
  });
  const exercise = { ...loosened, requirements };
  let wrongs: ReturnType<Marking['wrongs']> | null = null;
  return {
    exercise,
    gates: authored.gates,
    wrongs: () => {
      wrongs ??= knownWrongs(exercise);
      return wrongs;
    },
  };
}

/** The exercise with other tolerances, as drawn: where sizes differ they grow with the rest. */
export function withTolerances(
  definition: ExerciseDefinition,
  tolerances: Readonly<Record<string, number>>,
): ExerciseDefinition {
  const requirements = definition.requirements.map((one) => {
    return Object.hasOwn(tolerances, one.id) ? { ...one, allowed: tolerances[one.id]! } : one;
  });
  return { ...definition, requirements };
}
