import { describe, expect, test } from 'vitest';
import { expectClose } from './close.ts';
import { pick, seeded, shuffled, unitQuaternion, unitVector, whole } from './random.ts';

const draws = (seed: number, count: number) => {
  const random = seeded(seed);
  return Array.from({ length: count }, random);
};

describe('seeded', () => {
  test('gives the same numbers for a seed and others for the next', () => {
    const others = draws(8, 50);
    expect(draws(7, 50)).toEqual(draws(7, 50));
    expect(draws(7, 50).filter((value, i) => value === others[i])).toEqual([]);
  });

  test.each([0, 1, 2, 20261])('spreads evenly over 0..1, seed %i', (seed) => {
    const values = draws(seed, 20_000);
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    // Four standard deviations: of the mean of even draws 4 / √(12 · 20,000), of a tenth's count 4 · √(20,000 · 0.09).
    expectClose(mean, 0.5, 0.0082);
    for (let tenth = 0; tenth < 10; tenth++) {
      const count = values.filter((value) => Math.floor(value * 10) === tenth).length;
      expectClose(count, 2000, 170, `tenth ${tenth}`);
    }
  });
});

test('whole reaches both its ends and nothing beyond; pick reaches every choice', () => {
  const random = seeded(3);
  expect(new Set(Array.from({ length: 500 }, () => whole(random, -2, 2)))).toEqual(new Set([-2, -1, 0, 1, 2]));
  expect(new Set(Array.from({ length: 500 }, () => pick(random, ['otter', 'toad'])))).toEqual(
    new Set(['otter', 'toad']),
  );
});

test('shuffled keeps every item and puts each first about equally often', () => {
  const random = seeded(5);
  const firsts = [0, 0, 0, 0];
  for (let i = 0; i < 4000; i++) {
    const items = shuffled(random, [0, 1, 2, 3]);
    expect([...items].sort()).toEqual([0, 1, 2, 3]);
    firsts[items[0]]++;
  }
  for (const count of firsts) expectClose(count, 1000, 110);
});

test.each([unitVector, unitQuaternion])('%o has length 1 and no favourite side', (draw) => {
  const random = seeded(4);
  const all = Array.from({ length: 5000 }, (): readonly number[] => draw(random));
  for (const v of all) expectClose(Math.hypot(...v), 1, 1e-15);
  for (let i = 0; i < all[0].length; i++) expectClose(all.reduce((sum, v) => sum + v[i], 0) / all.length, 0, 0.035);
});
