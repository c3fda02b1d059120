import { readExerciseFile } from '../../../src/course/exercise-files.ts';
import type { Exercise } from '../../../src/grader/index.ts';
import { openExercise } from '../../../src/grader/index.ts';

/** An exercise of the course as the workbench opens it. */
export function courseExercise(id: string, seed = 0): Exercise {
  const { definition, edition } = readExerciseFile('content', id);
  return openExercise(definition, { edition, seed });
}
