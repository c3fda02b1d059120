import type { Assignment } from '../../../delivery/assignment/assignment.ts';
import { withStep } from '../../../delivery/submission/chain.ts';
import type { ChainStep, Submission } from '../../../delivery/submission/submission.ts';
import { seedAttempt, seedOf } from '../../../delivery/variant/seed.ts';
import type { Answer } from '../../../grader/exercise/answer.ts';
import type { ExerciseKind } from '../../../grader/exercise/definition.ts';
import { canonicalJson } from '../../canonical-json.ts';

/** What one learner has proved of an assignment, and the receipts of what was handed in. */
export interface Handing {
  assignment: string;
  learner: string;
  proved: readonly ProvedAnswer[];
  chain: readonly ChainStep[];
  receipts: readonly { at: string; receipt: string }[];
}

export interface ProvedAnswer {
  exercise: string;
  /** As it goes into the file and into the chain. */
  answer: Answer;
  /** From 0 to 1, as the browser found it: not the mark that counts. */
  mark: number;
  passed: boolean;
}

export function newHanding(assignment: string, learner: string): Handing {
  return { assignment, learner, proved: [], chain: [], receipts: [] };
}

/** The answers to one exercise, in the order in which they were proved. */
export const answersTo = ({ proved }: Handing, exercise: string): ProvedAnswer[] =>
  proved.filter((one) => one.exercise === exercise);

/**
 * The handing with one more proof: a step in the chain, and one more attempt. A proof of the very same work adds nothing.
 * @param at when, ISO 8601
 */
export function withProof(
  handing: Handing,
  { answer, kind, ...found }: { answer: Answer; kind: ExerciseKind; mark: number; passed: boolean },
  at: string,
): Handing {
  const { assignment, learner } = handing;
  const { exercise } = answer;
  const before = answersTo(handing, exercise);
  const last = before.at(-1);
  if (last && workOf(last.answer) === workOf(answer)) return handing;
  const attempt = attemptOfSeed(handing, answer, kind) ?? before.length + 1;
  // What is undefined would be lost in a file, and must not be told of in the chain.
  const whole = JSON.parse(JSON.stringify({ ...answer, learner, attempt, made: at })) as Answer;
  return {
    ...handing,
    proved: [...handing.proved, { exercise, answer: whole, ...found }],
    chain: withStep(handing.chain, { assignment, learner }, { at, exercise, answer: whole }),
  };
}

const workOf = ({ exercise, seed, rig, parts, response }: Answer): string =>
  canonicalJson({ exercise, seed, rig, parts, response });

/** Where each attempt is another drawing, the drawing tells which it is; null where all are of the same one. */
function attemptOfSeed(
  { assignment, learner }: Handing,
  { exercise, seed }: Answer,
  kind: ExerciseKind,
): number | null {
  return seedAttempt(kind, 2) === 1 ? null : drawingOf(assignment, learner, exercise, seed);
}

/** More drawings than anyone asks for. */
const MOST_DRAWINGS = 1000;

/** Which of a learner's drawings a seed stands for, from 1; the first where it is none of them. */
export function drawingOf(assignment: string, learner: string, exercise: string, seed: number): number {
  for (let drawing = 1; drawing <= MOST_DRAWINGS; drawing++) {
    if (seedOf(assignment, learner, exercise, drawing) === seed) return drawing;
  }
  return 1;
}

/**
 * What is handed in. Where attempts are counted, the first of them, as many as count; where they are not, of each exercise
 * the best answer and the last.
 */
export function submissionOf(handing: Handing, { exercises, attempts }: Assignment): Submission {
  const { assignment, learner, chain } = handing;
  const answers = exercises.flatMap(({ id }) => {
    const proved = answersTo(handing, id);
    const chosen = attempts === undefined ? bestAndLast(proved) : proved.slice(0, attempts);
    return chosen.map(({ answer }) => answer);
  });
  return { format: 'counterpose/submission', version: 1, assignment, learner, answers, chain };
}

function bestAndLast(proved: readonly ProvedAnswer[]): ProvedAnswer[] {
  const best = Math.max(...proved.map(({ mark }) => mark));
  const first = proved.findIndex(({ mark }) => mark === best);
  return proved.filter((_, i) => i === first || i === proved.length - 1);
}
