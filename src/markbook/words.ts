import type { BookFlag } from '../delivery/book/book.ts';
import type { Refusal } from '../solver/document/refusal.ts';

/** What a flag says, for people. */
export const FLAGS: Readonly<Record<BookFlag, string>> = {
  'other-assignment': 'names another assignment',
  unsigned: 'the assignment is signed by nobody',
  'unusable-answer': 'an answer could not be used',
  'other-variant': 'an answer to somebody else’s variant',
  'edition-differs': 'made for another edition',
  early: 'before it was open',
  late: 'late',
  'too-late': 'after the last time for late work',
  'chain-broken': 'the chain of steps is broken',
  'chain-lacks-answers': 'the chain of steps does not tell of every answer',
  'not-assigned': 'an answer to what was not set',
  'too-many-attempts': 'more attempts than count',
  'names-another-learner': 'an answer names another learner',
  resubmitted: 'handed in more than once',
  'unknown-learner': 'not in the roster',
  alike: 'the same free choices as somebody else',
  'probe-failed': 'passes, but fails under the secret probes',
};

export { percentText as percent } from '../delivery/percentText.ts';

export const refusalText = ({ place, found, expected }: Refusal): string =>
  `${place === '' ? '' : `At ${place}: `}found ${found}, expected ${expected}.`;
