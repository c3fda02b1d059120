import { UsageError } from './refusal.ts';

const SEED_LIMIT = 2 ** 48;

/** A seed from its option: a whole number from 0 below 2^48, as six bytes hold. */
export function seedOf(text: string | undefined): number {
  if (text === undefined) return 0;
  const seed = Number(text);
  if (/^\d+$/.test(text) && seed < SEED_LIMIT) return seed;
  throw new UsageError(`--seed is "${text}", expected a whole number from 0 to ${SEED_LIMIT - 1}`);
}
