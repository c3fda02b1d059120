import type { Attempt } from './attempt.ts';
import { type CourseExercise, itemOf } from './course.ts';
import type { Review } from './schedule.ts';
import { variantOf } from './variant.ts';

/** An attempt as it counts for one skill. */
export interface Counted extends Review {
  readonly variant: string;
  /** Variants that come out the same are one item. */
  readonly item: string;
}

/**
 * The attempts that count for a skill, the earliest first as they are given. A variant that has been passed is done
 * with: what is tried on it later counts neither way.
 */
export function countedOf(
  skill: string,
  attempts: readonly Attempt[],
  exercises: ReadonlyMap<string, CourseExercise>,
): Counted[] {
  const passed = new Set<string>();
  const counted: Counted[] = [];
  for (const attempt of attempts) {
    const exercise = exercises.get(attempt.exercise);
    const variant = variantOf(attempt);
    if (!exercise || !isOf(skill, attempt, exercise) || passed.has(variant)) continue;
    if (attempt.passed) passed.add(variant);
    counted.push({ variant, item: itemOf(exercise, attempt.seed), when: attempt.when, went: wentOf(skill, attempt) });
  }
  return counted;
}

/** An attempt kept before skills were counted names none: then it is of those that its exercise asks for today. */
function isOf(skill: string, attempt: Attempt, exercise: CourseExercise): boolean {
  return (attempt.skills.length > 0 ? attempt.skills : exercise.skills).includes(skill);
}

/** Who mends a rig after naming another fault has not shown that they can name it. */
function wentOf(skill: string, { passed, aided, named }: Attempt): Review['went'] {
  if (!passed || (skill === 'diagnose' && named === false)) return 'failed';
  return aided ? 'aided' : 'unaided';
}
