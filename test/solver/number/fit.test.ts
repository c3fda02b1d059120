import { readFileSync } from 'node:fs';
import type { Decimal } from 'decimal.js';
import { expect, test } from 'vitest';
import { Exact } from '../../support/decimal.ts';

/** A kernel's function of z, the ends between which it is fitted, and what its error is multiplied by in use. */
interface Fit {
  file: string;
  of: (z: Decimal) => Decimal;
  from: number;
  to: number;
  share: (z: Decimal) => Decimal;
  bits: number;
}

const overRoot = (f: (x: Decimal) => Decimal) => (z: Decimal) => f(z.sqrt()).div(z.sqrt()).minus(1).div(z);
const asGiven = (z: Decimal) => z;

const FITS: Fit[] = [
  { file: 'sineKernel', of: overRoot((x) => x.sin()), from: 0, to: 0.786 ** 2, share: asGiven, bits: 57 },
  { file: 'arctangentKernel', of: overRoot((x) => x.atan()), from: 0, to: 0.0626, share: asGiven, bits: 58 },
  { file: 'arcsineKernel', of: overRoot((x) => x.asin()), from: 0, to: 0.25, share: asGiven, bits: 57 },
  {
    file: 'cosineKernel',
    of: (z) => Exact.cos(z.sqrt()).minus(1).plus(z.div(2)).div(z.pow(2)),
    from: 0,
    to: 0.786 ** 2,
    share: (z) => z.pow(2),
    bits: 59,
  },
  { file: 'cbrt', of: (z) => z.cbrt(), from: 1, to: 8, share: (z) => Exact.cbrt(z).pow(-1), bits: 7.8 },
];

/** The constants P0, P1, … as they stand in the source. */
function coefficients(file: string): number[] {
  const source = readFileSync(new URL(`../../../src/solver/number/${file}.ts`, import.meta.url), 'utf8');
  return [...source.matchAll(/^const P\d+ = (.*);$/gm)].map(([, text]) => Number(text));
}

/** The roots of the Chebyshev polynomial of degree n, moved from −1..1 to from..to. */
function chebyshevPoints(from: number, to: number, n: number): Decimal[] {
  const quarter = Exact.acos(-1).div(2 * n);
  const [middle, half] = [new Exact(from).plus(to).div(2), new Exact(to).minus(from).div(2)];
  return Array.from({ length: n }, (_, k) => middle.plus(half.times(Exact.cos(quarter.times(2 * k + 1)))));
}

/** Newton's divided differences: value, first, second, … at the points. */
function dividedDifferences(points: Decimal[], of: Fit['of']): Decimal[] {
  const c = points.map(of);
  for (let order = 1; order < points.length; order++) {
    for (let i = points.length - 1; i >= order; i--) {
      c[i] = c[i].minus(c[i - 1]).div(points[i].minus(points[i - order]));
    }
  }
  return c;
}

/** Coefficients of the powers of z, of the polynomial through f at the points. */
function interpolate(points: Decimal[], of: Fit['of']): number[] {
  const differences = dividedDifferences(points, of);
  let powers: Decimal[] = [];
  for (let i = points.length - 1; i >= 0; i--) {
    const raised = [new Exact(0), ...powers];
    powers = raised.map((a, k) => a.minus(points[i].times(powers[k] ?? 0)));
    powers[0] = powers[0].plus(differences[i]);
  }
  return powers.map((power) => power.toNumber());
}

test.each(FITS)('$file: the coefficients are those of the fit', ({ file, of, from, to }) => {
  const found = coefficients(file);
  expect(found.length).toBeGreaterThan(4);
  expect(found).toEqual(interpolate(chebyshevPoints(from, to, found.length), of));
});

test.each(FITS)('$file: the error stays below 2^−$bits', ({ file, of, from, to, share, bits }) => {
  const found = coefficients(file).map((c) => new Exact(c));
  let worst = 0;
  for (let i = 1; i <= 300; i++) {
    const z = new Exact(to).minus(from).times(i).div(300).plus(from);
    const value = found.reduceRight((sum, c) => sum.times(z).plus(c), new Exact(0));
    worst = Math.max(worst, value.minus(of(z)).times(share(z)).abs().toNumber());
  }
  console.log(`${file}: 2^${Math.log2(worst).toFixed(2)}`);
  expect(worst).toBeGreaterThan(0);
  expect(worst).toBeLessThan(2 ** -bits);
});
