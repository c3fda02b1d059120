import { openExercise } from '../../grader/exercise/open.ts';
import type { CourseExercise } from '../../skills/course.ts';
import type { ExerciseFile } from '../exercise-files.ts';
import { minutesOf } from './minutes.ts';

/** What mastery and review have to know of an exercise. */
export function courseExercise({ definition, edition }: ExerciseFile): CourseExercise {
  const { id, lesson, skills, structures, sizes, draw = [] } = definition;
  const titles = structures.map((_, seed) => openExercise(definition, { edition, seed }).title);
  return { id, lesson, skills, minutes: minutesOf(definition), titles, sizes: sizes.length, draw };
}
