import { describe, expect, test } from 'vitest';
import { mapConstants, mapped } from '../../../src/solver/drivers/map.ts';
import type { DriverMap } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';

const at = (map: DriverMap, x: number) => mapped(Float64Array.from(mapConstants(map)), 0, x);
const all = (map: DriverMap, xs: readonly number[]) => xs.map((x) => at(map, x));

const HILL: DriverMap['keys'] = [
  [0, 0],
  [0.5, 1.5],
  [1, 1],
];

// CSS Easing Functions Level 2 `linear()`, web-platform-tests; check values J12 and J13.
test('straight between keys', () => {
  expectClose(all({ keys: HILL }, [0, 0.25, 0.5, 0.75, 1]), [0, 0.75, 1.5, 1.25, 1], 0);
  const dip: DriverMap['keys'] = [
    [0, 1],
    [0.5, -0.5],
    [1, 0],
  ];
  expectClose(all({ keys: dip }, [0, 0.25, 0.5, 0.75, 1]), [1, 0.25, -0.5, -0.25, 0], 0);
});
test('an inverted map runs 1 → 0', () => {
  const keys: DriverMap['keys'] = [
    [0, 1],
    [1, 0],
  ];
  expectClose(all({ keys }, [-1, 0, 0.25, 1, 2]), [1, 1, 0.75, 0, 0], 0);
});

describe('stepped', () => {
  const map: DriverMap = { keys: HILL, shape: 'stepped' };
  // CSS steps(…, jump-start) likewise gives a step to the side on its right; check value J14.
  test('a key holds until the next, and belongs to the stretch on its right', () => {
    expectClose(all(map, [-0.1, 0, 0.4999, 0.5, 0.9, 1, 1.1]), [0, 0, 0, 1.5, 1.5, 1, 1], 0);
  });
  test('is flat beyond, extended or not', () => {
    expectClose(all({ ...map, beyond: 'extend' }, [-9, 9]), [0, 1], 0);
  });
});

test('eased is CSS ease-in-out on every stretch', () => {
  // Check value J5.
  const keys: DriverMap['keys'] = [
    [0, 0],
    [2, 10],
    [4, -10],
  ];
  const values = all({ keys, shape: 'eased' }, [0.5, 1, 1.5, 2, 2.5]);
  expectClose(values, [1.2916193, 5, 8.7083807, 10, 10 - 20 * 0.12916193], 2e-7);
});

describe('extended', () => {
  const unit: DriverMap['keys'] = [
    [0, 0],
    [1, 1],
  ];
  const extended = (bezier: readonly [number, number, number, number], xs: readonly number[], keys = unit) =>
    all({ keys, shape: { bezier }, beyond: 'extend' }, xs);

  // CSS Easing Functions Level 1 §output, web-platform-tests; check values J10 and J11.
  test('goes on along the end tangent', () => {
    expectClose(extended([0.5, 1, 0.5, 0], [-0.3, 1.3]), [-0.6, 1.6], 1e-15);
  });
  test('is flat where the tangent is upright', () => {
    expectClose(extended([0, 1.5, 1, 1.5], [1.7]), [1], 0);
    expectClose(extended([0, -0.5, 1, -0.5], [-0.7]), [0], 0);
  });
  test('takes the next control point that differs from the end', () => {
    expectClose(extended([0, 0, 0.5, 0.25], [-1]), [-0.5], 1e-15);
    expectClose(extended([0.5, 0.75, 1, 1], [2]), [1.5], 1e-15);
    expectClose(extended([0, 0, 1, 1], [-1, 2]), [-1, 2], 0);
    expectClose(extended([0, 0, 0, 0], [-1]), [-1], 0);
    expectClose(extended([1, 1, 1, 1], [2]), [2], 0);
  });
  test('by the end stretch alone, in the units of its keys', () => {
    const keys: DriverMap['keys'] = [
      [0, 0],
      [10, 1],
      [20, 5],
    ];
    expectClose(extended([0.5, 1, 0.5, 0], [-5, 25], keys), [-1, 9], 1e-14);
    expectClose(all({ keys, beyond: 'extend' }, [-5, 25]), [-0.5, 7], 1e-15);
    expectClose(all({ keys, beyond: 'extend', shape: 'eased' }, [-5, 25]), [0, 5], 0);
  });
});

test('keys are met exactly', () => {
  const keys: DriverMap['keys'] = [
    [-0.1, 0.3],
    [0.7, 1 / 3],
    [1.3, Math.PI],
  ];
  for (const shape of ['straight', 'eased', 'stepped', { bezier: [0.1, 2, 0.3, -4] }] as const) {
    for (const [x, y] of keys) expect(at({ keys, shape, beyond: 'extend' }, x)).toBe(y);
  }
});
