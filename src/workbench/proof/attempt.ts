import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Attempt } from '../../skills/attempt.ts';
import { isBuiltOnFile } from '../edit/openDraft.ts';
import type { Session } from '../state/session.ts';
import type { ProofRecord } from './record.ts';

/**
 * What mastery and review are to count of a proof, given the session as it was before it; null where the same state
 * had been proved already.
 */
export function attemptOf(
  before: Session,
  proof: ProofRecord,
  exercise: Pick<Exercise, 'id' | 'skills' | 'kind' | 'fault'>,
): Attempt | null {
  const last = before.proofs.at(-1);
  if (last?.stamp === proof.stamp && last.result.seed === proof.result.seed) return null;
  return {
    skills: exercise.skills.toSorted(),
    exercise: exercise.id,
    seed: proof.result.seed,
    when: proof.when,
    passed: proof.result.passed,
    aided: isAided(before),
    ...(exercise.kind === 'repair' && { named: proof.guess === exercise.fault }),
  };
}

function isAided({ hints, history }: Session): boolean {
  return hints.length > 0 || isBuiltOnFile(history);
}
