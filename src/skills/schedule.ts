import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';

/** One review, as it went: without help, with help, not at all. */
export interface Review {
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly went: 'unaided' | 'aided' | 'failed';
}

export interface Schedule {
  /** When the next review is due, in milliseconds since 1970. */
  readonly due: number;
  /** Days after which nine in ten would still be able to do it. */
  readonly stabilityDays: number;
  /** From 1, easy, to 10. */
  readonly difficulty: number;
}

/** Help is not forgetting, but it is not knowing either. */
const RATINGS = { unaided: Rating.Good, aided: Rating.Hard, failed: Rating.Again } as const;

/** The library's published parameters. Whole days alone, and nothing left to chance: the same reviews, the same date. */
const scheduler = fsrs({ enable_short_term: false, enable_fuzz: false });

/** When the next review is due after these, the first of which begins the schedule. */
export function scheduleOf(reviews: readonly [Review, ...Review[]]): Schedule {
  let card = createEmptyCard(reviews[0].when);
  for (const { when, went } of reviews) card = scheduler.next(card, when, RATINGS[went]).card;
  return { due: card.due.getTime(), stabilityDays: card.stability, difficulty: card.difficulty };
}
