import { describe, expect, test } from 'vitest';
import numbers from '../../content/numbers.json' with { type: 'json' };
import { numbersSchema } from '../../src/course/numbers/schema.ts';
import { falseTorsionDeg, TABLES, vergenceDeg } from '../../src/course/numbers/tables.ts';

describe('the page of numbers', () => {
  test('has a source for each number, or says that there is none', () => {
    expect(() => numbersSchema.parse(numbers)).not.toThrow();
    const [group] = structuredClone(numbers);
    Reflect.deleteProperty(group!.rows[0]!, 'seen');
    expect(() => numbersSchema.parse([group])).toThrow('common practice');
  });

  test('tells each thing once', () => {
    const told = numbers.flatMap(({ rows }) => rows.map(({ what, value }) => `${what}: ${value}`));
    expect(new Set(told).size).toBe(told.length);
  });

  test('has rows as long as their heads', () => {
    for (const { id, head, rows } of TABLES) for (const row of rows) expect(row, id).toHaveLength(head.length);
  });
});

/** Worked out elsewhere, with 2·atan(p ÷ 2d), for 60 and 63 mm. */
describe('vergence', () => {
  test.each([
    [0.06, 0.25, 13.6855],
    [0.06, 0.4, 8.5783],
    [0.06, 0.5, 6.8673],
    [0.06, 1, 3.4367],
    [0.06, 6, 0.573],
    [0.063, 0.25, 14.3628],
    [0.063, 0.4, 9.0055],
    [0.063, 6, 0.6016],
  ])('eyes %d m apart at %d m close by %d°', (apart, away, degrees) => {
    expect(vergenceDeg(apart, away)).toBeCloseTo(degrees, 3);
  });

  /** A prism dioptre is a centimetre in a metre: 7 Δ are 4.0042° (dictionary entry "prism dioptre"). */
  test('a centimetre aside in a metre is one prism dioptre', () => {
    expect(vergenceDeg(0.14, 1) / 2).toBeCloseTo(4.0042, 3);
  });
});

/** Duane's Ophthalmology, vol. 8, ch. 23, fig. 4, lists 1°, 3°, 8°, 15°; the exact values after Nakayama and others, 1983. */
describe('false torsion', () => {
  test.each([
    [10, 0.877097, 1],
    [20, 3.561642, 3],
    [30, 8.213211, 8],
    [40, 15.092562, 15],
  ])('%d° out and up', (degrees, exact, listed) => {
    expect(falseTorsionDeg(degrees, degrees)).toBeCloseTo(exact, 5);
    expect(Math.abs(falseTorsionDeg(degrees, degrees) - listed)).toBeLessThan(0.6);
  });
});
