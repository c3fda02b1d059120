import type { ExerciseKind } from '../../grader/exercise/definition.ts';

/** An exercise as an instructor chooses it. */
export interface OfferedExercise {
  id: string;
  chapter: Titled;
  lesson: Titled;
  title: string;
  kind: ExerciseKind;
  minutes: number;
  /** What is practised, in words. */
  skills: readonly string[];
  structures: number;
  sizes: number;
  /** Of the last audit that was published; null where it was not yet among the exercises. */
  audit: AuditRow | null;
  /** What may be allowed otherwise: no gates, and nothing that allows none at all. */
  tolerances: readonly OfferedTolerance[];
}

export interface Titled {
  number: string;
  title: string;
}

export interface AuditRow {
  rightTried: number;
  rightRefused: number;
  wrongTried: number;
  wrongPassed: number;
}

export interface OfferedTolerance {
  id: string;
  says: string;
  allowed: number;
  unit: string;
  /** The amount must be reached, not kept under. */
  atLeast: boolean;
}

export interface Offer {
  /** Day of the published audit. */
  audited: string | null;
  /** Whether the exercises are those that were audited. */
  isAuditCurrent: boolean;
  exercises: readonly OfferedExercise[];
}
