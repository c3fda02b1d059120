import type { Decimal } from 'decimal.js';
import { expect, vi } from 'vitest';
import { errorInUlps, exactDecimal } from '../../support/decimal.ts';
import { pick, type Random, seeded } from '../../support/random.ts';

// Decimals of 60 digits take their time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

/** A double in low..high with all its 53 bits drawn. */
export const fine = (random: Random, low: number, high: number) =>
  low + (high - low) * (random() + random() / 4294967296);

/** Of either sign, its exponent evenly from `least` to `most`. */
export const scaled = (random: Random, least: number, most: number) =>
  pick(random, [-1, 1]) * 2 ** fine(random, least, most);

export interface Comparison<Args extends number[]> {
  name: string;
  ours: (...args: Args) => number;
  exact: (...args: { [K in keyof Args]: Decimal }) => Decimal;
  draw: (random: Random) => Args;
  count?: number;
}

/**
 * The worst error in ulps over seeded arguments, against decimals of 60 digits; fails above 1 and prints the worst, so
 * that the figure can be read in the run's output.
 */
export function expectWithinOneUlp<Args extends number[]>({
  name,
  ours,
  exact,
  draw,
  count = 1500,
}: Comparison<Args>): void {
  const random = seeded(20261);
  let worst = 0;
  let at: number[] = [];
  for (let i = 0; i < count; i++) {
    const args = draw(random);
    const error = errorInUlps(ours(...args), exact(...(args.map(exactDecimal) as { [K in keyof Args]: Decimal })));
    if (error > worst) [worst, at] = [error, args];
  }
  console.log(`${name}: worst of ${count} is ${worst.toFixed(3)} ulp, at ${at.join(', ')}`);
  expect(worst).toBeGreaterThan(0);
  expect(worst).toBeLessThanOrEqual(1);
}
