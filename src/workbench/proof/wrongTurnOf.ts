import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { RequirementResult } from '../../grader/result.ts';

/** What the learner is told of the wrong turn they took, or ''. */
export function wrongTurnOf(exercise: Pick<Exercise, 'wrongTurns'>, result: RequirementResult): string {
  return exercise.wrongTurns.find(({ id }) => id === result.diagnosis)?.tells ?? '';
}
