import type { ExerciseKind } from '../../grader/exercise/definition.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Session } from '../state/session.ts';

/** How an exercise is answered: by a rig, by the map of one driver, by a pose, or on a form. */
export type AnsweredBy = 'rig' | 'map' | 'pose' | 'form';

const BY: Readonly<Record<ExerciseKind, AnsweredBy>> = {
  build: 'rig',
  repair: 'rig',
  shape: 'map',
  pose: 'pose',
  predict: 'form',
  order: 'form',
};

export function answeredBy({ kind }: Pick<Exercise, 'kind'>): AnsweredBy {
  return BY[kind];
}

/** Whether each attempt is another drawing: once answered, trying the same one over would teach nothing. */
export function redraws(exercise: Pick<Exercise, 'kind'>): boolean {
  return answeredBy(exercise) === 'form';
}

/** Whether this drawing has had its answer. */
export function isAnswered(session: Session, exercise: Pick<Exercise, 'kind'>): boolean {
  return redraws(exercise) && session.proofs.at(-1)?.result.seed === session.seed;
}
