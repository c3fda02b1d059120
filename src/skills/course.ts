import type { Draw } from '../grader/exercise/definition.ts';
import { drawNumbers } from '../grader/exercise/draw.ts';
import type { Skill } from './table.ts';

/** What of the course mastery and review have to know; plain data. */
export interface Course {
  /** Those that are written, in order. */
  readonly lessons: readonly CourseLesson[];
  /** In the order in which the lessons show them. */
  readonly exercises: readonly CourseExercise[];
  /** All that it counts, those of unwritten lessons too. */
  readonly skills: readonly Skill[];
}

export interface CourseLesson {
  /** "3.4" */
  readonly number: string;
  readonly title: string;
  /** From the course's root, "/lessons/…/". */
  readonly address: string;
  /** The id in its page of the worked example. */
  readonly example: string;
}

export interface CourseExercise {
  readonly id: string;
  readonly lesson: string;
  readonly skills: readonly string[];
  /** How long a rebuild takes, by estimate. */
  readonly minutes: number;
  /** The title of each structure. */
  readonly titles: readonly string[];
  /** How many sizes there are. */
  readonly sizes: number;
  readonly draw: readonly Draw[];
}

/** What a seed makes of an exercise, structure, size and drawn numbers: seeds that make the same give the same text. */
export function itemOf({ id, titles, sizes, draw }: CourseExercise, seed: number): string {
  const structure = seed % titles.length;
  const size = Math.floor(seed / titles.length) % sizes;
  return [id, structure, size, ...Object.values(drawNumbers(draw, seed))].join(' ');
}

/** How many different items the seeds of an exercise can make. */
export function itemCount({ titles, sizes, draw }: Pick<CourseExercise, 'titles' | 'sizes' | 'draw'>): number {
  const drawn = draw.map(({ from, to, step }) => Math.floor((to - from) / step + 1e-9) + 1);
  return [titles.length, sizes, ...drawn].reduce((product, count) => product * count, 1);
}
