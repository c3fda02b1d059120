import type { Attempt } from './attempt.ts';
import type { Course, CourseExercise, CourseLesson } from './course.ts';
import { isDue } from './day.ts';
import { merged } from './merge.ts';
import { type Offer, offerToLearn, offerToReview } from './offer.ts';
import { type Standing, standingOf } from './standing.ts';
import type { Skill } from './table.ts';

/** After so many tries without mastery help is offered, not more of the same. */
export const TRIES_BEFORE_HELP = 10;

/** One skill as it stands, and what to do for it. */
export interface Row {
  readonly skill: Skill;
  readonly standing: Standing;
  readonly due: boolean;
  /** What to try; for a skill that is known, what to rebuild. */
  readonly offer: Offer;
  /** The lesson to go back to, where ten tries have not been enough. */
  readonly help: CourseLesson | null;
}

export interface Sheet {
  /** Every skill that has an exercise, in the order of the course. */
  readonly rows: readonly Row[];
  /** Those due for review, the one longest due first. */
  readonly due: readonly Row[];
  /** The first lesson whose skills are not all known, with the rows of those that are not. */
  readonly next: { readonly lesson: CourseLesson; readonly rows: readonly Row[] } | null;
}

/** What is known, what is due and what comes next, at a time in milliseconds since 1970. */
export function sheetOf(course: Course, attempts: readonly Attempt[], now: number): Sheet {
  const inOrder = merged(attempts);
  const byId = new Map(course.exercises.map((exercise) => [exercise.id, exercise]));
  const rows = course.skills.flatMap((skill) => {
    const exercises = course.exercises.filter(({ skills }) => skills.includes(skill.id));
    return exercises.length > 0 ? [rowOf(skill, standingOf(skill.id, inOrder, byId), exercises)] : [];
  });
  return {
    rows,
    due: rows.filter(({ due }) => due).toSorted((a, b) => dueOf(a) - dueOf(b)),
    next: nextIn(course, rows),
  };

  function rowOf(skill: Skill, standing: Standing, exercises: readonly CourseExercise[]): Row {
    const known = standing.is === 'known';
    return {
      skill,
      standing,
      due: known && isDue(standing.schedule.due, now),
      offer: known ? offerToReview(exercises, inOrder) : offerToLearn(exercises, inOrder),
      help: standing.is === 'under-way' && standing.tries >= TRIES_BEFORE_HELP ? helpFor(skill, exercises) : null,
    };
  }

  /** A skill of the whole course is taught where it was tried last. */
  function helpFor(skill: Skill, exercises: readonly CourseExercise[]): CourseLesson | null {
    const ids = exercises.map(({ id }) => id);
    const tried = inOrder.findLast(({ exercise }) => ids.includes(exercise));
    const number = skill.lesson ?? byId.get(tried?.exercise ?? '')?.lesson;
    return course.lessons.find((lesson) => lesson.number === number) ?? null;
  }
}

function dueOf({ standing }: Row): number {
  return standing.is === 'known' ? standing.schedule.due : Number.POSITIVE_INFINITY;
}

function nextIn({ lessons }: Course, rows: readonly Row[]): Sheet['next'] {
  for (const lesson of lessons) {
    const open = rows.filter(({ skill, standing }) => skill.lesson === lesson.number && standing.is !== 'known');
    if (open.length > 0) return { lesson, rows: open };
  }
  return null;
}
