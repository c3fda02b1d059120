import type { Graded } from '../../grader/result.ts';
import type { Assignment } from '../assignment/assignment.ts';
import type { OpenedAssignment } from '../assignment/readAssignment.ts';
import { chainStateOf } from '../submission/chain.ts';
import { receiptOf } from '../submission/receipt.ts';
import type { ChainState, Submission } from '../submission/submission.ts';
import { seedAttempt } from '../variant/seed.ts';
import type { AssignmentGrader } from './gradeAnswer.ts';
import { type Lateness, latenessOf } from './lateness.ts';
import { type GradedMark, type MarkedAnswer, markedAnswer } from './markedAnswer.ts';

/** What a submission is worth, exercise by exercise. Marks are shares, from 0 to 1. */
export interface MarkedSubmission {
  assignment: string;
  learner: string;
  exercises: MarkedExercise[];
  /** Weighted mean of the exercises' marks, before anything is taken for being late. */
  worth: number;
  late: Lateness;
  /** What counts. */
  mark: number;
  passed: boolean;
  chain: ChainState;
  receipt: string;
  flags: SubmissionFlag[];
}

export interface MarkedExercise {
  exercise: string;
  weight: number;
  /** Of the answer that counts; 0 where none does. */
  mark: number;
  passed: boolean;
  /** Which of the answers counts; null where none can. */
  counted: number | null;
  answers: MarkedAnswer[];
}

/** Which of the answers to an exercise counts, of as many as are allowed. */
export type Counts = 'best' | 'last';

/** What an instructor should look at. Flags change no mark, except that answers beyond the attempts do not count. */
export type SubmissionFlag =
  | 'other-assignment'
  | 'unsigned'
  | 'unusable-answer'
  | 'other-variant'
  | 'edition-differs'
  | 'late'
  | 'too-late'
  | 'early'
  | 'chain-broken'
  | 'chain-lacks-answers'
  | 'not-assigned'
  | 'too-many-attempts'
  | 'names-another-learner';

/**
 * Marks one learner's submission.
 * @param collected when it came in, by whoever collected it: ISO 8601 with a zone; null where nobody knows
 */
export function markSubmission(
  opened: OpenedAssignment,
  grader: AssignmentGrader,
  submission: Submission,
  collected: string | null,
  counts: Counts = 'best',
): MarkedSubmission {
  const { assignment } = opened;
  const answers = submission.answers.map((answer) => markedAnswer(grader.grade(answer, submission.learner)));
  const exercises = assignment.exercises.map(({ id, weight }) =>
    markExercise({ id, weight }, answers, assignment.attempts, counts),
  );
  const weights = exercises.reduce((sum, { weight }) => sum + weight, 0);
  const worth = exercises.reduce((sum, { weight, mark }) => sum + weight * mark, 0) / weights;
  const late = latenessOf(assignment, collected);
  const mark = Math.max(0, worth - late.taken);
  const chain = chainStateOf(submission);
  return {
    assignment: submission.assignment,
    learner: submission.learner,
    exercises,
    worth,
    late,
    mark,
    passed: mark >= assignment.passMark,
    chain,
    receipt: receiptOf(submission),
    flags: flagsOf(assignment, submission, answers, late, chain),
  };
}

/** Answers count in the order in which they are handed in, as many as are allowed; one that cannot be used is one of them. */
function markExercise(
  { id, weight }: { id: string; weight: number },
  all: readonly MarkedAnswer[],
  attempts: number | undefined,
  counts: Counts,
): MarkedExercise {
  const answers = all.filter((one) => one.exercise === id);
  let counted: number | null = null;
  answers.slice(0, attempts).forEach((one, i) => {
    if (one.outcome === 'unusable' || isRedrawnBeyond(one, attempts)) return;
    if (counted === null || counts === 'last' || one.mark > markOf(answers[counted]!)) counted = i;
  });
  const chosen = counted === null ? null : answers[counted]!;
  const passed = chosen?.outcome === 'graded' && chosen.passed;
  return { exercise: id, weight, mark: chosen ? markOf(chosen) : 0, passed, counted, answers };
}

/** Where each attempt is another drawing, nobody may pick an easy one from beyond the attempts. */
const isRedrawnBeyond = ({ kind, attempt }: GradedMark, attempts = Number.POSITIVE_INFINITY): boolean =>
  seedAttempt(kind, attempt) > attempts;

const markOf = (one: MarkedAnswer): number => (one.outcome === 'graded' ? one.mark : 0);

function flagsOf(
  assignment: Assignment,
  submission: Submission,
  answers: readonly MarkedAnswer[],
  late: Lateness,
  chain: ChainState,
): SubmissionFlag[] {
  const has = (flag: Graded['flags'][number]) => {
    return answers.some((one) => one.outcome === 'graded' && one.flags.includes(flag));
  };
  const ids = assignment.exercises.map(({ id }) => id);
  const flags: [SubmissionFlag, boolean][] = [
    ['other-assignment', submission.assignment !== assignment.id],
    ['unsigned', has('unsigned')],
    ['unusable-answer', answers.some(({ outcome }) => outcome === 'unusable')],
    ['other-variant', has('seed-differs')],
    ['edition-differs', has('edition-differs')],
    ['early', late.state === 'early'],
    ['late', late.state === 'late'],
    ['too-late', late.state === 'too-late'],
    ['chain-broken', chain === 'broken'],
    ['chain-lacks-answers', chain === 'lacks-answers'],
    ['not-assigned', answers.some((one) => !ids.includes(one.exercise ?? ''))],
    ['too-many-attempts', hasTooMany(assignment, answers)],
    ['names-another-learner', submission.answers.some((answer) => namesAnother(answer, submission.learner))],
  ];
  return flags.flatMap(([flag, holds]) => (holds ? [flag] : []));
}

function hasTooMany({ exercises, attempts }: Assignment, answers: readonly MarkedAnswer[]): boolean {
  if (attempts === undefined) return false;
  const isOver = (id: string) => answers.filter((one) => one.exercise === id).length > attempts;
  return (
    exercises.some(({ id }) => isOver(id)) ||
    answers.some((one) => one.outcome === 'graded' && isRedrawnBeyond(one, attempts))
  );
}

function namesAnother(answer: unknown, learner: string): boolean {
  const named = (answer as { learner?: unknown } | null)?.learner;
  return typeof named === 'string' && named !== learner;
}
