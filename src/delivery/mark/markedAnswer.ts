import type { ExerciseKind } from '../../grader/exercise/definition.ts';
import type { Graded, RequirementResult } from '../../grader/result.ts';
import type { Refusal } from '../../solver/document/refusal.ts';
import type { GradedAnswer } from './gradeAnswer.ts';

/** What a mark book keeps of an answer: what was met by name, what was not with all that was found. */
export type MarkedAnswer = GradedMark | { outcome: 'unusable'; exercise: string | null; refusal: Refusal };

export interface GradedMark {
  outcome: 'graded';
  exercise: string;
  kind: ExerciseKind;
  seed: number;
  attempt: number;
  mark: number;
  passed: boolean;
  flags: Graded['flags'];
  met: string[];
  missed: MissedRequirement[];
}

export type MissedRequirement = Pick<
  RequirementResult,
  'id' | 'status' | 'gate' | 'measured' | 'allowed' | 'unit' | 'counterpose' | 'diagnosis'
>;

export function markedAnswer(graded: GradedAnswer): MarkedAnswer {
  if (graded.outcome === 'unusable') return graded;
  const { attempt, result } = graded;
  const { exercise, exerciseKind: kind, seed, mark, passed, flags, requirements } = result;
  const met = requirements.filter(({ status }) => status === 'met').map(({ id }) => id);
  const missed = requirements.filter(({ status }) => status !== 'met').map(missedOf);
  return { outcome: 'graded', exercise, kind, seed, attempt, mark, passed, flags, met, missed };
}

function missedOf(one: RequirementResult): MissedRequirement {
  const { id, status, gate, measured, allowed, unit, counterpose, diagnosis } = one;
  return { id, status, gate, measured, allowed, unit, counterpose, diagnosis };
}
