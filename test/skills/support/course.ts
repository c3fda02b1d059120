import type { Attempt } from '../../../src/skills/attempt.ts';
import type { Course, CourseExercise } from '../../../src/skills/course.ts';
import { SKILLS } from '../../../src/skills/table.ts';

/** Three variants each: one structure at three sizes. */
const exercise = (id: string, lesson: string, skills: readonly string[], minutes: number): CourseExercise => {
  return { id, lesson, skills, minutes, titles: [`Title of ${id}`], sizes: 3, draw: [] };
};

export const COURSE: Course = {
  lessons: [
    { number: '3.1', title: 'The shortest turn', address: '/lessons/3.1-turn/', example: 'worked-example-vane' },
    { number: '3.2', title: 'In line at rest', address: '/lessons/3.2-line/', example: 'worked-example-eye' },
  ],
  exercises: [
    exercise('one-vane', '3.1', ['shortest-turn'], 2),
    exercise('many-vanes', '3.1', ['shortest-turn'], 8),
    exercise('flinch', '3.2', ['in-line-at-rest', 'diagnose'], 3),
    exercise('ball-in-its-socket', '3.2', ['pivot-in-the-middle'], 4),
  ],
  skills: SKILLS,
};

export const BY_ID = new Map(COURSE.exercises.map((each) => [each.id, each]));

/** Midday, where the tests run, of a day counted from 2 November 2026, a Monday. */
export function noon(day: number): number {
  return new Date(2026, 10, 2 + day, 12).getTime();
}

let moment = 0;

/** An attempt that passed without help, a second after the last one that was made here. */
export function attempt(exerciseId: string, seed: number, change: Partial<Attempt> = {}): Attempt {
  const { skills } = BY_ID.get(exerciseId)!;
  return { skills, exercise: exerciseId, seed, when: noon(0) + 1000 * moment++, passed: true, aided: false, ...change };
}

export const FAILED = { passed: false } as const;
export const AIDED = { aided: true } as const;
