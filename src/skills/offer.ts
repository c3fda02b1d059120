import type { Attempt } from './attempt.ts';
import type { CourseExercise } from './course.ts';
import { variantOf } from './variant.ts';

/** A variant of an exercise to work on. */
export interface Offer {
  readonly exercise: string;
  readonly seed: number;
  readonly title: string;
  readonly minutes: number;
}

/** A review rebuilds something that takes no longer than this, where there is such an exercise. */
export const REVIEW_MINUTES = 3;

type Exercises = readonly [CourseExercise, ...CourseExercise[]];

/**
 * What to try next for a skill: of its exercises that which has been passed the least, in the first variant that has not
 * been passed; one that was begun comes back as it was left.
 */
export function offerToLearn(exercises: Exercises, attempts: readonly Attempt[]): Offer {
  const passed = attempts.filter((attempt) => attempt.passed);
  return leastUsed(exercises, passed);
}

/** What to rebuild in a review: something small, in the first variant that has never been tried. */
export function offerToReview(exercises: Exercises, attempts: readonly Attempt[]): Offer {
  return leastUsed(smallOnes(exercises), attempts);
}

/** The exercises that are small enough to rebuild; the smallest of them all where none is. */
export function smallOnes(exercises: Exercises): Exercises {
  const least = Math.min(...exercises.map(({ minutes }) => minutes));
  const small = exercises.filter(({ minutes }) => minutes <= Math.max(REVIEW_MINUTES, least));
  return small as unknown as Exercises;
}

function leastUsed(exercises: Exercises, used: readonly Attempt[]): Offer {
  const variants = new Set(used.map(variantOf));
  const seedsOf = ({ id }: CourseExercise) => new Set(used.filter(({ exercise }) => exercise === id).map(variantOf));
  const [{ id, titles, minutes }] = exercises.toSorted(
    (a, b) => seedsOf(a).size - seedsOf(b).size,
  ) as never as Exercises;
  let seed = 0;
  while (variants.has(variantOf({ exercise: id, seed }))) seed++;
  return { exercise: id, seed, title: titles[seed % titles.length]!, minutes };
}
