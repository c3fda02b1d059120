import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alphaInterval, correlationInterval, proportionInterval } from '../../../src/delivery/analysis/intervals.ts';
import {
  alpha,
  alphaFrom,
  correlation,
  itemRest,
  itemTotal,
  mean,
  variance,
} from '../../../src/delivery/analysis/reliability.ts';
import { expectClose } from '../../support/close.ts';

/**
 * LSAT, section 6: how many of 1000 answered the five items so, patterns 00000 to 11111 in order (R. D. Bock and
 * M. Lieberman, Psychometrika 35, 1970; the table as the R package psych has it, bock.table).
 */
const COUNTS = [
  3, 6, 2, 11, 1, 1, 3, 4, 1, 8, 0, 16, 0, 3, 2, 15, 10, 29, 14, 81, 3, 28, 15, 80, 16, 56, 21, 173, 11, 61, 28, 298,
];
const LSAT6 = COUNTS.flatMap((count, pattern) => {
  const row = [16, 8, 4, 2, 1].map((bit) => (pattern & bit ? 1 : 0));
  return Array.from({ length: count }, () => row);
});

describe('LSAT6', () => {
  test('is of 1000, as easy as published', () => {
    expect(LSAT6).toHaveLength(1000);
    const easy = [0, 1, 2, 3, 4].map((item) => mean(LSAT6.map((row) => row[item]!)));
    expectClose(easy, [0.924, 0.709, 0.553, 0.763, 0.87], 1e-9);
  });

  test('has the published alpha', () => {
    expect(alpha(LSAT6)).toBeCloseTo(0.295, 4);
  });
});

/** K. Wuensch, KR20 note, East Carolina University, core.ecu.edu/wuenschk/StatHelp/KR20.txt (read): ten answer ten items. */
const WUENSCH = [
  ...['1111110110', '1011011101', '1111011001', '0010001000', '0000010010'],
  ...['1110111111', '1101110111', '1111111101', '0101111101', '1101101110'],
].map((row) => [...row].map(Number));

describe('the table of the KR20 note', () => {
  test('has the published Σpq, variance and KR-20', () => {
    const items = WUENSCH[0]!.map((_, item) => variance(WUENSCH.map((row) => row[item]!)));
    expect(items.reduce((a, b) => a + b)).toBeCloseTo(2.18, 9);
    expect(variance(WUENSCH.map((row) => row.reduce((a, b) => a + b)))).toBeCloseTo(5.84, 9);
    expect(alpha(WUENSCH)).toBeCloseTo(0.6963, 4);
    expect(alphaFrom(10, 2.18, 5.84)).toBeCloseTo(0.6963, 4);
  });

  test('has item 1 with and without itself as published', () => {
    expect(itemTotal(WUENSCH, 0)).toBeCloseTo(0.7946, 4);
    expect(itemRest(WUENSCH, 0)).toBeCloseTo(0.7059, 4);
  });
});

/** Worked by hand: two items, four learners. */
test('a table small enough to work out', () => {
  const marks = [
    [1, 1],
    [1, 0],
    [0, 0],
    [1, 1],
  ];
  // p = ¾ and ½, Σpq = 3/16 + 4/16; totals 2, 1, 0, 2 have variance 11/16; alpha = 2 (1 − 7/11) = 8/11.
  expect(alpha(marks)).toBeCloseTo(8 / 11, 12);
  expect(itemRest(marks, 0)).toBeCloseTo(1 / Math.sqrt(3), 12);
  expect(itemTotal(marks, 0)!).toBeGreaterThan(itemRest(marks, 0)!);
});

describe('what cannot be said', () => {
  test.each([
    ['nobody', []],
    ['one learner', [[1, 0]]],
    ['one item', [[1], [0]]],
    [
      'everybody alike',
      [
        [1, 1],
        [1, 1],
      ],
    ],
  ])('%s', (_, marks) => {
    expect(alpha(marks)).toBeNull();
  });

  test('marks that are all alike but for the rounding of their sums', () => {
    const alike = Array.from({ length: 3 }, () => [0.1, 0.6, 0.3]);
    expect(alpha(alike)).toBeNull();
    expect(itemRest(alike, 0)).toBeNull();
    expect(
      itemRest(
        [0.1, 0.2, 0.7].map((mark) => [0.1, mark]),
        0,
      ),
    ).toBeNull();
  });

  test('an item that all answered alike has no correlation', () => {
    expect(
      itemRest(
        [
          [1, 0],
          [1, 1],
          [1, 0],
        ],
        0,
      ),
    ).toBeNull();
  });
});

test('an item against the rest is as its definition has it, whatever the marks', () => {
  const marks = fc.array(
    fc.array(
      fc.integer({ min: 0, max: 20 }).map((n) => n / 20),
      { minLength: 3, maxLength: 3 },
    ),
    {
      minLength: 3,
    },
  );
  fc.assert(
    fc.property(marks, (table) => {
      const rest = table.map(([, b, c]) => b! + c!);
      expect(itemRest(table, 0) ?? 0).toBeCloseTo(
        correlation(
          table.map(([a]) => a!),
          rest,
        ) ?? 0,
        5,
      );
      const value = alpha(table);
      if (value !== null && variance(table.map(([a, b, c]) => a! + b! + c!)) > 1e-6)
        expect(value).toBeLessThan(1 + 1e-9);
    }),
    { seed: 4 },
  );
});

describe('intervals', () => {
  /** R. G. Newcombe, Stat. Med. 17, 1998, table I, method 3: 81 of 263 and 15 of 148 (from memory). */
  test('Wilson’s', () => {
    const [low, high] = proportionInterval(81 / 263, 263)!;
    expect([low.toFixed(4), high.toFixed(4)]).toEqual(['0.2553', '0.3662']);
    const [least, most] = proportionInterval(15 / 148, 148)!;
    expect([least.toFixed(4), most.toFixed(4)]).toEqual(['0.0624', '0.1605']);
  });

  /** z = atanh r ± 1.96/√(n − 3): r = 0.5 of 28 gives 0.1595 to 0.7357, worked out by hand. */
  test('Fisher’s', () => {
    const [low, high] = correlationInterval(0.5, 28)!;
    expect(low).toBeCloseTo(Math.tanh(0.5493061443 - 0.3919927969), 9);
    expect(high).toBeCloseTo(Math.tanh(0.5493061443 + 0.3919927969), 9);
    expect(correlationInterval(1, 28)).toBeNull();
  });

  test('of alpha hold it, and narrow with the class', () => {
    const [low, high] = alphaInterval(0.7, 10, 60)!;
    const [closer, nearer] = alphaInterval(0.7, 10, 600)!;
    expect(low).toBeLessThan(0.7);
    expect(high).toBeGreaterThan(0.7);
    expect(nearer - closer).toBeLessThan(high - low);
  });
});

/** What is left of a correlation with a total when the item's own part of it is taken away, from the variances alone. */
function withoutItself(r: number, own: number, total: number): number {
  const together = r * Math.sqrt(own * total);
  return (together - own) / Math.sqrt(own * (total + own - 2 * together));
}

describe('an item with and without itself', () => {
  test('are tied by the variances, in any table', () => {
    const rows = fc.array(fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 4, maxLength: 4 }), { minLength: 6 });
    fc.assert(
      fc.property(rows, (table) => {
        const [r, rest] = [itemTotal(table, 0), itemRest(table, 0)];
        fc.pre(r !== null && rest !== null);
        const own = variance(table.map(([mark]) => mark!));
        const total = variance(table.map((row) => row.reduce((a, b) => a + b)));
        expect(rest).toBeCloseTo(withoutItself(r!, own, total), 9);
      }),
      { seed: 8 },
    );
  });
});
