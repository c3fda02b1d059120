/** Maps at their keys, between them and beyond them. Hand-worked unless a source is named. */
import { describe, expect, it } from 'vitest';
import type { DriverMap, Switch } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, posed, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;
const DIAL: Switch = { name: 'dial', min: -1000, max: 1000, default: 0, sliding: true };

/** The gauge's move along x shows what the map makes of the dial. */
const dialed = (map: DriverMap) =>
  rigOf(
    [bone('toad', { switches: [DIAL] }), bone('gauge')],
    [{ name: 'show', inputs: [{ from: { switch: 'toad.dial' } }], map, output: { bone: 'gauge', channel: 'move.x' } }],
  );

describe.each(SOLVERS)('a map by the %s', (_, solve) => {
  const mapped = (map: DriverMap, x: number) => baseOf(solve(dialed(map), posed({}, { 'toad.dial': x })), 'gauge')[0];

  const unit = (shape: DriverMap['shape'], beyond: DriverMap['beyond'] = 'extend'): DriverMap => ({
    keys: [
      [0, 0],
      [1, 1],
    ],
    shape: shape!,
    beyond: beyond!,
  });

  it.each<[string, DriverMap, number, number, number]>([
    ['ease-in-out at .25 (CSS Easing 1; check value J5)', unit('eased'), 0.25, 0.12916193, 1e-8],
    ['ease-in-out at .75 (J5)', unit('eased'), 0.75, 0.87083807, 1e-8],
    ['ease at .5 (J2)', unit({ bezier: [0.25, 0.1, 0.25, 1] }), 0.5, 0.80240339, 1e-8],
    ['ease-in at .7 (J3)', unit({ bezier: [0.42, 0, 1, 1] }), 0.7, 0.55481403, 1e-8],
    ['ease-out at .25 (J4)', unit({ bezier: [0, 0, 0.58, 1] }), 0.25, 0.37813813, 1e-8],
    [
      'a curve with vertical ends at .5 (web-platform-tests; J7)',
      unit({ bezier: [0, 1.5, 1, 1.5] }),
      0.5,
      11 / 8 - 1 / 8,
      1e-9,
    ],
    ['beyond the end along its slope (J10)', unit({ bezier: [0.5, 1, 0.5, 0] }), 1.5, 2, EXACT],
    ['before the start along its slope (J10)', unit({ bezier: [0.5, 1, 0.5, 0] }), -0.5, -1, EXACT],
    ['beyond a vertical end (J11)', unit({ bezier: [0, 1.5, 1, 1.5] }), 1.5, 1, EXACT],
    ['before a vertical start (J11)', unit({ bezier: [0, -0.5, 1, -0.5] }), -0.5, 0, EXACT],
    ['before a start whose first control point lies on it', unit({ bezier: [0, 0, 0.5, 1] }), -1, -2, EXACT],
    ['beyond an end whose control points all lie on it', unit({ bezier: [1, 1, 1, 1] }), 3, 3, EXACT],
    ['before a start whose control points all lie on it', unit({ bezier: [0, 0, 0, 0] }), -3, -3, EXACT],
    ['beyond with hold', unit({ bezier: [0.5, 1, 0.5, 0] }, 'hold'), 1.5, 1, EXACT],
    ['eased, beyond', unit('eased'), 1.5, 1, EXACT],
    ['stepped, before', unit('stepped'), -0.5, 0, EXACT],
    ['stepped, beyond', unit('stepped'), 1.5, 1, EXACT],
    ['straight, beyond', unit('straight'), 1.5, 1.5, EXACT],
  ])('%s', (_says, map, x, expected, tolerance) => {
    expectClose(mapped(map, x), expected, tolerance);
  });

  it('gives a key to the stretch on its right', () => {
    const steps: DriverMap = {
      keys: [
        [0, 1],
        [2, 5],
        [4, 3],
      ],
      shape: 'stepped',
    };
    expect([-1, 0, 1, 2, 3, 4, 5].map((x) => mapped(steps, x))).toEqual([1, 1, 1, 5, 5, 3, 3]);
  });

  it('extends by the end stretches only', () => {
    const bent: DriverMap = {
      keys: [
        [0, 0],
        [1, 2],
        [3, 0],
      ],
      beyond: 'extend',
    };
    expectClose(
      [-1, 0.5, 2, 4].map((x) => mapped(bent, x)),
      [-2, 1, 1, -1],
      EXACT,
    );
  });

  it('does the bezier anew in each stretch', () => {
    const curve: DriverMap = {
      keys: [
        [0, 0],
        [4, 2],
        [6, 0],
      ],
      shape: { bezier: [0.25, 0.1, 0.25, 1] },
    };
    expectClose(
      [2, 5].map((x) => mapped(curve, x)),
      [2 * 0.80240339, 2 - 2 * 0.80240339],
      2e-8,
    );
  });
});
