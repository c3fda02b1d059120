import type { Attempt } from './attempt.ts';

/** An exercise at a seed, as one word. */
export function variantOf({ exercise, seed }: Pick<Attempt, 'exercise' | 'seed'>): string {
  return `${exercise} ${seed}`;
}
