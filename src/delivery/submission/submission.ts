/** What one learner hands in for one assignment. */
export interface Submission {
  format: 'counterpose/submission';
  version: 1;
  /** The assignment's id. */
  assignment: string;
  /** The learner's code, as in the roster. */
  learner: string;
  /** Answer documents, each read by itself when it is graded: a broken one spoils no other. */
  answers: readonly unknown[];
  chain?: readonly ChainStep[];
}

/**
 * One proof that was made on the way. Each step holds the hash of the one before it, the first that of the assignment
 * and the learner; so steps cannot be taken out, put in, or moved without its showing. It does not show who made them:
 * whoever holds the file can make a new chain.
 */
export interface ChainStep {
  /** When, as the browser claims: ISO 8601. */
  at: string;
  exercise: string;
  /** SHA-256 over the answer's canonical JSON, hex. */
  answer: string;
  /** SHA-256 over the step before, hex. */
  before: string;
}

/** What a chain shows of the submission it stands in. */
export type ChainState = 'none' | 'whole' | 'broken' | 'lacks-answers';
