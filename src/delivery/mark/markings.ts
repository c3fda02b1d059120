import { knownWrongs } from '../../grader/diagnosis.ts';
import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';
import { type Exercise, type Marking, markingOf, openExercise, variantCount } from '../../grader/index.ts';
import type { Assignment } from '../assignment/assignment.ts';

const MARKINGS_KEPT = 64;

/**
 * The exercises of an assignment as its learners have them. A class has as many seeds as learners but few variants, so
 * what does not depend on the seed itself is worked out once a variant. The last few seeds are kept; memory stays bounded.
 */
export class Markings {
  readonly #assignment: Assignment;
  readonly #variants = new Map<string, Variant>();
  readonly #kept = new Map<string, Marking>();

  constructor(assignment: Assignment) {
    this.#assignment = assignment;
  }

  /** Null where the exercise is not assigned. */
  of(id: string, seed: number): Marking | null {
    const key = `${id}\n${seed}`;
    const known = this.#kept.get(key);
    if (known) return known;
    const variant = this.#variantOf(id, seed);
    if (!variant) return null;
    const marking = variant(seed);
    keep(this.#kept, key, marking);
    return marking;
  }

  #variantOf(id: string, seed: number): Variant | null {
    const assigned = this.#assignment.exercises.find((one) => one.id === id);
    const carried = this.#assignment.carried.find(({ definition }) => definition.id === id);
    if (!assigned || !carried) return null;
    const { definition, edition } = carried;
    const first = firstSeedLike(definition, seed);
    const key = `${id}\n${first}`;
    const known = this.#variants.get(key);
    if (known) return known;
    const variant = variantOf(definition, assigned.tolerances ?? {}, { edition, seed: first });
    keep(this.#variants, key, variant);
    return variant;
  }
}

function keep<T>(kept: Map<string, T>, key: string, value: T): void {
  if (kept.size >= MARKINGS_KEPT) kept.delete(kept.keys().next().value!);
  kept.set(key, value);
}

/** The least seed with the same structure and size; where numbers are drawn every seed stands for itself. */
const firstSeedLike = (definition: ExerciseDefinition, seed: number): number =>
  definition.draw?.length ? seed : seed % variantCount(definition);

/** A variant of an exercise: what marks its answers, for any seed that gives it. */
type Variant = (seed: number) => Marking;

/** Gates are those of the exercise as it was written, and keep what they allow; the rest allows what is assigned. */
function variantOf(
  definition: ExerciseDefinition,
  tolerances: Readonly<Record<string, number>>,
  about: { edition: string; seed: number },
): Variant {
  const written = openExercise(definition, about);
  const loosened = openExercise(withTolerances(definition, tolerances), about);
  let wrongs: ReturnType<Marking['wrongs']> | null = null;
  return (seed) => {
    const { gates } = markingOf({ ...written, seed });
    const own = { ...assignedWith(gates, written, loosened), seed };
    return {
      exercise: own,
      gates,
      wrongs: () => {
        wrongs ??= knownWrongs({ ...own, seed: about.seed });
        return wrongs;
      },
    };
  };
}

function assignedWith(gates: ReadonlySet<string>, written: Exercise, loosened: Exercise): Exercise {
  const requirements = loosened.requirements.map((one, i) => {
    const before = written.requirements[i]!;
    return gates.has(before.id) ? before : one;
  });
  return { ...loosened, requirements };
}

/** The marking of one exercise under other tolerances, for one seed. */
export const assignedMarking = (
  definition: ExerciseDefinition,
  tolerances: Readonly<Record<string, number>>,
  { edition, seed }: { edition: string; seed: number },
): Marking => variantOf(definition, tolerances, { edition, seed: firstSeedLike(definition, seed) })(seed);

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
