import { hashOf } from '../hash.ts';
import type { ChainState, ChainStep, Submission } from './submission.ts';

/** What the first step holds in place of a step before it. */
const beginning = (assignment: string, learner: string): string => hashOf({ assignment, learner });

/** The chain with one more proof of an answer. */
export function withStep(
  chain: readonly ChainStep[],
  { assignment, learner }: Pick<Submission, 'assignment' | 'learner'>,
  proof: { at: string; exercise: string; answer: unknown },
): ChainStep[] {
  const last = chain.at(-1);
  const before = last ? hashOf(last) : beginning(assignment, learner);
  return [...chain, { at: proof.at, exercise: proof.exercise, answer: hashOf(proof.answer), before }];
}

/** Whether a submission's chain is whole, in order, and tells of every answer that is handed in. */
export function chainStateOf({ assignment, learner, answers, chain }: Submission): ChainState {
  if (!chain) return 'none';
  let before = beginning(assignment, learner);
  for (const step of chain) {
    if (step.before !== before) return 'broken';
    before = hashOf(step);
  }
  const told = new Set(chain.map(({ answer }) => answer));
  return answers.every((answer) => told.has(hashOf(answer))) ? 'whole' : 'lacks-answers';
}
