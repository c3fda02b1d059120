import { resolve } from 'node:path';
import { exerciseIds, readExerciseFile } from '../../../src/course/exercise-files.ts';
import { type Answer, type Exercise, openExercise } from '../../../src/grader/index.ts';

const CONTENT = resolve(import.meta.dirname, '../../../content');

export function allExercises(): Exercise[] {
  return exerciseIds(CONTENT).map((id) => exerciseOf(id));
}

/** An exercise as drawn: that of seed 0, which its page shows. */
export function exerciseOf(id: string): Exercise {
  const { definition, edition } = readExerciseFile(CONTENT, id);
  return openExercise(definition, { edition, seed: 0 });
}

/** A reference or a wrong turn as a learner would hand it in. */
export function answerFrom(
  { id, edition, seed }: Exercise,
  built: Exercise['references'][number] | Exercise['wrongTurns'][number],
): Answer {
  const { rig, response, parts } = built;
  const work = response === undefined ? { rig } : { response };
  return {
    format: 'counterpose/answer',
    version: 1,
    exercise: id,
    edition,
    seed,
    ...work,
    ...(parts ? { parts } : {}),
  };
}
