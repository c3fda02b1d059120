import bezierEasing from 'bezier-easing';
import { describe, expect, test } from 'vitest';
import type { Driver, DriverMap, MapShape } from '../../src/solver/index.ts';
import { readRig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { between, seeded } from '../support/random.ts';
import { bone, rigDocument, solved } from './stage.ts';

/** A driver's map as the curve of an animation: a sliding switch in, a bone's move out. */

const windSwitch = { name: 'blow', min: -200, max: 200, default: 0, sliding: true };

function documentOf(map: DriverMap) {
  const driver: Driver = {
    name: 'gust',
    inputs: [{ from: { switch: 'wind.blow' } }],
    map,
    output: { bone: 'vane', channel: 'move.x' },
  };
  return rigDocument([bone('wind', { switches: [windSwitch] }), bone('vane')], [driver]);
}

const valueAt = (map: DriverMap, x: number): number =>
  solved(documentOf(map), { switches: { 'wind.blow': x } }).vane.base[0];

const eased = (shape: MapShape, x: number, beyond: DriverMap['beyond'] = 'hold') =>
  valueAt(
    {
      keys: [
        [0, 0],
        [1, 1],
      ],
      shape,
      beyond,
    },
    x,
  );

type Bezier = [number, number, number, number];
const EASE: Bezier = [0.25, 0.1, 0.25, 1];
const EASE_IN: Bezier = [0.42, 0, 1, 1];
const EASE_OUT: Bezier = [0, 0, 0.58, 1];
const EASE_IN_OUT: Bezier = [0.42, 0, 0.58, 1];

/** W3C, CSS Easing Functions Level 1, cubic-bezier() (control points seen); values by three independent solvers. */
describe('CSS cubic-bezier', () => {
  const CASES: [string, Bezier, number, number][] = [
    ['J2 ease', EASE, 0.25, 0.40851059],
    ['J2 ease', EASE, 0.5, 0.80240339],
    ['J2 ease', EASE, 0.75, 0.96045898],
    ['J3 ease-in', EASE_IN, 0.25, 0.09346465],
    ['J3 ease-in', EASE_IN, 0.5, 0.31535681],
    ['J3 ease-in', EASE_IN, 0.7, 0.55481403],
    ['J3 ease-in', EASE_IN, 0.75, 0.62186187],
    ['J4 ease-out', EASE_OUT, 0.25, 0.37813813],
    ['J4 ease-out', EASE_OUT, 0.5, 0.68464319],
    ['J4 ease-out', EASE_OUT, 0.75, 0.90653535],
    ['J5 ease-in-out', EASE_IN_OUT, 0.25, 0.12916193],
    ['J5 ease-in-out', EASE_IN_OUT, 0.5, 0.5],
    ['J5 ease-in-out', EASE_IN_OUT, 0.75, 0.87083807],
  ];
  test.each(CASES)('%s', (_, bezier, x, y) => {
    expectClose(eased({ bezier }, x), y, 1e-8);
  });

  test('J1: eased is ease-in-out', () => {
    for (let i = 0; i <= 20; i++) expectClose(eased('eased', i / 20), eased({ bezier: EASE_IN_OUT }, i / 20), 0);
  });

  test('J19: ease-in gives 0.5548 at 0.7, not the 0.52 of the introduction’s picture', () => {
    expect(() => expectClose(eased({ bezier: EASE_IN }, 0.7), 0.52, 0.03)).toThrow(/off by/);
  });

  test('J6: an inverted map of ease-out is ease-in the other way round', () => {
    for (let i = 0; i <= 40; i++) {
      const inverted = valueAt(
        {
          keys: [
            [0, 1],
            [1, 0],
          ],
          shape: { bezier: EASE_OUT },
        },
        1 - i / 40,
      );
      expectClose(inverted, eased({ bezier: EASE_IN }, i / 40), 1e-12);
    }
  });

  test.each([-1, 0, 0.25, 0.5, 0.75, 1.5, 2])(
    'J7: cubic-bezier(0, y, 1, y), y = (8·%f − 1)/6, has that value at ½ (web-platform-tests, interpolation-testcommon.js, seen)',
    (p) => {
      const y = (8 * p - 1) / 6;
      expectClose(eased({ bezier: [0, y, 1, y] }, 0.5), p, 1e-12);
    },
  );
});

/** CSS Easing Level 1, output outside 0..1, and web-platform-tests, css-easing/cubic-bezier-timing-functions-output (seen). */
describe('beyond the ends', () => {
  test('J10: cubic-bezier(.5, 1, .5, 0) goes on along its end tangents', () => {
    for (const x of [1.2, 2, 5]) expectClose(eased({ bezier: [0.5, 1, 0.5, 0] }, x, 'extend'), 1 + 2 * (x - 1), 1e-12);
    for (const x of [-0.2, -1, -4]) expectClose(eased({ bezier: [0.5, 1, 0.5, 0] }, x, 'extend'), 2 * x, 1e-12);
  });

  test('J11: where the tangent is upright, it holds', () => {
    for (const x of [1.2, 3]) expectClose(eased({ bezier: [0, 1.5, 1, 1.5] }, x, 'extend'), 1, 0);
    for (const x of [-0.2, -3]) expectClose(eased({ bezier: [0, -0.5, 1, -0.5] }, x, 'extend'), 0, 0);
  });
});

/** W3C, CSS Easing Functions Level 2, linear(), and web-platform-tests, css-easing/linear-timing-functions-output (seen). */
describe('CSS linear() as keys', () => {
  const samples = (map: DriverMap, at: number[]) => at.map((x) => valueAt(map, x));
  const quarters = [0, 0.25, 0.5, 0.75, 1];

  test('J12: linear(0, 1.5, 1)', () => {
    expectClose(
      samples(
        {
          keys: [
            [0, 0],
            [0.5, 1.5],
            [1, 1],
          ],
        },
        quarters,
      ),
      [0, 0.75, 1.5, 1.25, 1],
      1e-12,
    );
  });

  test('J13: linear(1, −.5, 0)', () => {
    expectClose(
      samples(
        {
          keys: [
            [0, 1],
            [0.5, -0.5],
            [1, 0],
          ],
        },
        quarters,
      ),
      [1, 0.25, -0.5, -0.25, 0],
      1e-12,
    );
  });

  test('J14: five flat steps are steps(5, jump-start)', () => {
    const keys = [
      [0, 0.2],
      [0.2, 0.4],
      [0.4, 0.6],
      [0.6, 0.8],
      [0.8, 1],
      [1, 1],
    ] as const;
    const got = samples({ keys, shape: 'stepped' }, [0, 0.2, 0.4, 0.6, 0.8, 1]);
    expectClose(got, [0.2, 0.4, 0.6, 0.8, 1, 1], 0);
  });

  test('J18: fewer than two keys and a bezier x outside 0..1 are refused', () => {
    expect(readRig(documentOf({ keys: [[0, 0]] })).ok).toBe(false);
    for (const x of [-0.1, 1.1]) {
      expect(
        readRig(
          documentOf({
            keys: [
              [0, 0],
              [1, 1],
            ],
            shape: { bezier: [x, 0, 0.5, 1] },
          }),
        ).ok,
      ).toBe(false);
      expect(
        readRig(
          documentOf({
            keys: [
              [0, 0],
              [1, 1],
            ],
            shape: { bezier: [0.5, 0, x, 1] },
          }),
        ).ok,
      ).toBe(false);
    }
  });
});

/** VRM Consortium, VRMC_vrm 1.0, lookAt.md: min(|v|, input max) / input max · output scale, v of either sign (seen). */
describe('VRM range maps as keys', () => {
  test.each([
    [45, 5],
    [90, 10],
    [120, 10],
  ])('H14: 90 → 10 takes %f° to %f°', (x, y) => {
    expectClose(
      valueAt(
        {
          keys: [
            [0, 0],
            [90, 10],
          ],
        },
        x,
      ),
      y,
      1e-14,
    );
  });

  test('H16: down 90 → 15 and up 90 → 5; left 90 → 20 and right 90 → 10', () => {
    const pitch: DriverMap = {
      keys: [
        [-90, -5],
        [0, 0],
        [90, 15],
      ],
    };
    expectClose([valueAt(pitch, 30), valueAt(pitch, -120)], [5, -5], 1e-14);
    expectClose(
      valueAt(
        {
          keys: [
            [0, 0],
            [90, 20],
          ],
        },
        120,
      ),
      20,
      0,
    );
    expectClose(
      valueAt(
        {
          keys: [
            [0, 0],
            [90, 10],
          ],
        },
        120,
      ),
      10,
      0,
    );
  });
});

test('bezier-easing 3.2, inside 0..1: 2,000 seeded curves and places', () => {
  const random = seeded(61);
  let worst = 0;
  for (let i = 0; i < 2000; i++) {
    const bezier: Bezier = [random(), between(random, -1, 2), random(), between(random, -1, 2)];
    const x = random();
    const [ours, theirs] = [eased({ bezier }, x), bezierEasing(...bezier)(x)];
    expectClose(ours, theirs, 1e-12, `cubic-bezier(${bezier}) at ${x}`);
    worst = Math.max(worst, Math.abs(ours - theirs));
  }
  console.log(`bezier-easing: worst ${worst.toExponential(2)}`);
  expect(worst).toBeGreaterThan(0);
});
