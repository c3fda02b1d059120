import bezierEasing from 'bezier-easing';
import { describe, expect, test } from 'vitest';
import { bezier } from '../../../src/solver/drivers/bezier.ts';
import { expectClose } from '../../support/close.ts';
import { Exact, exactDecimal } from '../../support/decimal.ts';
import { between, seeded } from '../../support/random.ts';

// CSS Easing Functions Level 1; check values J2–J5 (bezier-easing, bisection and mathjs agree).
test.each([
  ['ease', [0.25, 0.1, 0.25, 1], [0.25, 0.5, 0.75], [0.40851059, 0.80240339, 0.96045898]],
  ['ease-in', [0.42, 0, 1, 1], [0.25, 0.5, 0.7, 0.75], [0.09346465, 0.31535681, 0.55481403, 0.62186187]],
  ['ease-out', [0, 0, 0.58, 1], [0.25, 0.5, 0.75], [0.37813813, 0.68464319, 0.90653535]],
  ['ease-in-out', [0.42, 0, 0.58, 1], [0.25, 0.5, 0.75], [0.12916193, 0.5, 0.87083807]],
] as const)('%s', (_, [x1, y1, x2, y2], at, expected) => {
  expectClose(
    at.map((x) => bezier(x1, y1, x2, y2, x)),
    expected,
    5e-9,
  );
});

// web-platform-tests, interpolation-testcommon.js `timingFunction()`; check value J7.
test.each([-1, 0, 0.25, 0.5, 0.75, 1.5, 2])('cubic-bezier(0, y, 1, y) is %s half way', (progress) => {
  const y = (8 * progress - 1) / 6;
  expectClose(bezier(0, y, 1, y, 0.5), progress, 1e-15);
});

test('ends at 0 and 1', () => {
  expect(bezier(0.3, 0.7, 0.2, -1, 0)).toBe(0);
  expect(bezier(0.3, 0.7, 0.2, -1, 1)).toBe(1);
});

/** The same curve with 60 digits, by halving. */
function exactBezier([x1, y1, x2, y2]: readonly number[], x: number): number {
  const goal = exactDecimal(x);
  const at = (p1: number, p2: number, t: InstanceType<typeof Exact>) => {
    const u = t.neg().plus(1);
    const first = exactDecimal(p1).times(3).times(t).times(u).times(u);
    return first.plus(exactDecimal(p2).times(3).times(t).times(t).times(u)).plus(t.pow(3));
  };
  let low = new Exact(0);
  let high = new Exact(1);
  for (let i = 0; i < 120; i++) {
    const middle = low.plus(high).div(2);
    if (at(x1, x2, middle).lt(goal)) low = middle;
    else high = middle;
  }
  return at(y1, y2, low).toNumber();
}

describe('to full precision', () => {
  test('on curves without an upright stretch', () => {
    const random = seeded(7);
    for (let i = 0; i < 150; i++) {
      const curve = [between(random, 0, 1), between(random, -1, 2), between(random, 0, 1), between(random, -1, 2)];
      const [x1, y1, x2, y2] = curve;
      const x = random();
      // Where the curve is steep the last bit of x alone moves y by more.
      const steepness = 1 + Math.abs(bezier(x1, y1, x2, y2, x + 1e-7) - bezier(x1, y1, x2, y2, x - 1e-7)) / 2e-7;
      expectClose(bezier(x1, y1, x2, y2, x), exactBezier(curve, x), 1e-15 * steepness, JSON.stringify([curve, x]));
    }
  });
  test.each([1e-300, 1e-30, 1e-15, 1e-7, 1 - 1e-7, 1 - 2 ** -52, 1 - 2 ** -53])('upright at the ends, at %s', (x) => {
    const curve = [0, 1, 1, 0] as const;
    expectClose(bezier(...curve, x), exactBezier(curve, x), 2.3e-16);
    const steeper = [0, 1, 0, 1] as const;
    expectClose(bezier(...steeper, x), exactBezier(steeper, x), 2.3e-16);
  });
  test('upright in the middle', () => {
    expect(bezier(1, 0, 0, 1, 0.5)).toBe(0.5);
    expectClose(bezier(1, 0, 0, 1, 0.5 + 1e-9), exactBezier([1, 0, 0, 1], 0.5 + 1e-9), 1e-10);
  });
});

test('rises with x on every rising curve, to the bit', () => {
  const random = seeded(3);
  for (let i = 0; i < 200; i++) {
    const [x1, x2, y1, y2] = [random(), random(), random(), random()];
    let last = 0;
    for (let k = 0; k <= 200; k++) {
      const y = bezier(x1, y1, x2, y2, k / 200);
      expect(y).toBeGreaterThanOrEqual(last - 2e-16);
      last = y;
    }
  }
});

// An independent solver, within 0..1 only; it works to 1e-7 on flat stretches.
test('agrees with bezier-easing', () => {
  const random = seeded(11);
  for (let i = 0; i < 500; i++) {
    const curve = [between(random, 0.05, 0.95), between(random, -1, 2), between(random, 0.05, 0.95), random()] as const;
    const x = random();
    expectClose(bezier(...curve, x), bezierEasing(...curve)(x), 1e-5);
  }
});
