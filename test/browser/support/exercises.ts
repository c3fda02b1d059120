import { resolve } from 'node:path';
import { exerciseIds, readExerciseFile } from '../../../src/course/exercise-files.ts';
import { type Answer, type Exercise, openExercise, responseKindOf } from '../../../src/grader/index.ts';

const CONTENT = resolve(import.meta.dirname, '../../../content');

export function allExercises(): Exercise[] {
  return exerciseIds(CONTENT).map((id) => exerciseOf(id));
}

/** An exercise as drawn: that of seed 0, which its page shows. */
export function exerciseOf(id: string): Exercise {
  const { definition, edition } = readExerciseFile(CONTENT, id);
  return openExercise(definition, { edition, seed: 0 });
}

export type Built = Exercise['references'][number] | Exercise['wrongTurns'][number];

/** A reference or a wrong turn as a learner would hand it in. */
export function answerFrom(exercise: Exercise, built: Built): Answer {
  const { id, edition, seed } = exercise;
  const about = { format: 'counterpose/answer', version: 1, exercise: id, edition, seed } as const;
  if (responseKindOf(exercise.kind)) return { ...about, response: responseFrom(exercise, built) };
  const { rig, parts } = built;
  return { ...about, rig, ...(parts ? { parts } : {}) };
}

/** A map is drawn by an edit of the start, and what a prediction says is worked out: neither stands in the content. */
function responseFrom({ kind, shape }: Exercise, { response, values, rig }: Built): unknown {
  if (kind === 'predict') return { values };
  if (kind === 'shape') return response ?? { map: rig.drivers?.find(({ name }) => name === shape)?.map };
  return response;
}
