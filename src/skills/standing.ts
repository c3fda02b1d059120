import type { Attempt } from './attempt.ts';
import { type Counted, countedOf } from './counted.ts';
import type { CourseExercise } from './course.ts';
import { type Review, type Schedule, scheduleOf } from './schedule.ts';

/** So many different items in a row, unaided, are mastery. */
export const IN_A_ROW = 3;

/** How a learner stands with one skill. */
export type Standing =
  | { readonly is: 'not-begun' }
  | { readonly is: 'under-way'; readonly inARow: number; readonly tries: number }
  | { readonly is: 'known'; readonly since: number; readonly lastWent: Review['went']; readonly schedule: Schedule };

/**
 * How the attempts, the earliest first, leave a skill. Three different items passed in a row without help are mastery; a
 * proof that misses, or help, starts the row again. What is known stays known: a review that fails brings the next one
 * nearer.
 */
export function standingOf(
  skill: string,
  attempts: readonly Attempt[],
  exercises: ReadonlyMap<string, CourseExercise>,
): Standing {
  const counted = countedOf(skill, attempts, exercises);
  if (counted.length === 0) return { is: 'not-begun' };
  const { inARow, mastered } = rowIn(counted);
  if (mastered === null) return { is: 'under-way', inARow, tries: counted.length };
  const first = counted[mastered]!;
  const reviews = reviewsIn(counted.slice(mastered + 1));
  const lastWent = (reviews.at(-1) ?? first).went;
  return { is: 'known', since: first.when, lastWent, schedule: scheduleOf([first, ...reviews]) };
}

/** How many items stand in a row at the end, and at which attempt the row was first long enough. */
function rowIn(counted: readonly Counted[]): { inARow: number; mastered: number | null } {
  const row = new Set<string>();
  for (const [i, { item, went }] of counted.entries()) {
    if (went === 'unaided') row.add(item);
    else row.clear();
    if (row.size === IN_A_ROW) return { inARow: IN_A_ROW, mastered: i };
  }
  return { inARow: row.size, mastered: null };
}

/** After mastery the first proof of each variant is a review; what it takes to get it right then is not. */
function reviewsIn(counted: readonly Counted[]): Counted[] {
  const seen = new Set<string>();
  return counted.filter(({ variant }) => !seen.has(variant) && seen.add(variant));
}
