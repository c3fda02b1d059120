import { join } from 'node:path';
import { exerciseIds, readExerciseFile } from '../../src/course/exercise-files.ts';
import { type Answer, type Exercise, markingOf, openExercise } from '../../src/grader/index.ts';
import type { Rig } from '../../src/solver/index.ts';

export const contentDir = join(import.meta.dirname, '../../content');

/** One of the course's exercises, opened for a seed. */
export function exerciseFor(id: string, seed = 0): Exercise {
  const { definition, edition } = readExerciseFile(contentDir, id);
  return openExercise(definition, { edition, seed });
}

/** All of them, as drawn. */
export const openedExercises = (): Exercise[] => exerciseIds(contentDir).map((id) => exerciseFor(id));

export const markingFor = (id: string, seed = 0) => markingOf(exerciseFor(id, seed));

/** An answer document to an exercise. */
export function answerTo(exercise: Exercise, rig: Rig, parts: Readonly<Record<string, string>> = {}): Answer {
  const { id, edition, seed } = exercise;
  return { format: 'counterpose/answer', version: 1, exercise: id, edition, seed, rig, parts };
}
