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

/**
 * What to try next for a skill: of its exercises, of which there is at least one, that which has been passed the least,
 * in the first variant that has not been passed; one that was begun comes back as it was left.
 */
export function offerToLearn(exercises: readonly CourseExercise[], attempts: readonly Attempt[]): Offer {
  const passed = attempts.filter((attempt) => attempt.passed);
  return leastUsed(exercises, passed);
}

/** What to rebuild in a review: something small, in the first variant that has never been tried. */
export function offerToReview(exercises: readonly CourseExercise[], attempts: readonly Attempt[]): Offer {
  return leastUsed(smallOnes(exercises), attempts);
}

/** The exercises that are small enough to rebuild; the smallest of them all where none is. */
export function smallOnes(exercises: readonly CourseExercise[]): CourseExercise[] {
  const least = Math.min(...exercises.map(({ minutes }) => minutes));
  return exercises.filter(({ minutes }) => minutes <= Math.max(REVIEW_MINUTES, least));
}

function leastUsed(exercises: readonly CourseExercise[], used: readonly Attempt[]): Offer {
  const variants = new Set(used.map(variantOf));
  const countOf = ({ id }: CourseExercise) =>
    new Set(used.filter(({ exercise }) => exercise === id).map(({ seed }) => seed)).size;
  const { id, titles, minutes } = exercises.reduce((a, b) => (countOf(b) < countOf(a) ? b : a));
  let seed = 0;
  while (variants.has(variantOf({ exercise: id, seed }))) seed++;
  return { exercise: id, seed, title: titles[seed % titles.length]!, minutes };
}
