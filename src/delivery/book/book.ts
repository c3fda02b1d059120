import type { Refusal } from '../../solver/document/refusal.ts';
import type { MarkedSubmission } from '../mark/markSubmission.ts';

/** The marks of a class for one assignment: one file that can be saved, opened again, and merged with another. */
export interface Book {
  format: 'counterpose/markbook';
  version: 1;
  assignment: { id: string; title: string; signedBy: string | null; passMark: number };
  /** By code: those of the roster, then others who handed something in. */
  learners: readonly BookLearner[];
  /** Files that are nobody's work. */
  strays: readonly { path: string; refusal: Refusal }[];
}

export interface BookLearner {
  learner: string;
  /** Null for one who is not in the roster. */
  name: string | null;
  handedIn: readonly HandedIn[];
  /** Which of them counts; null where there is none. */
  counted: number | null;
  flags: readonly BookFlag[];
  /** What people wrote: by whom and when is theirs to say. */
  notes: readonly Note[];
}

export interface HandedIn {
  path: string;
  collected: string | null;
  marked: MarkedSubmission;
}

export type BookFlag = MarkedSubmission['flags'][number] | 'resubmitted' | 'unknown-learner' | 'alike' | 'probe-failed';

/** A comment, a mark set by hand with its reason, or a rubric line that no program can judge. */
export type Note = {
  /** Tells notes apart when books are merged. */
  id: string;
  at: string;
  by: string;
} & (
  | { kind: 'comment'; exercise: string | null; says: string }
  | { kind: 'override'; exercise: string; mark: number; reason: string }
  | { kind: 'rubric'; line: string; mark: number; outOf: number; says: string }
);

/** Which submission counts where a learner handed in several. */
export type ResubmissionRule = 'last' | 'best';
