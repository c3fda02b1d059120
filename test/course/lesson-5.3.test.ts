import { describe, expect, test } from 'vitest';
import type { DriverMap, Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/5.3-the-inverted-map';
const letGo = rigOf(`${folder}/let-go.json`);
const sagging = rigOf(`${folder}/sagging.json`);
const heron = rigOf(`${folder}/heron-calm.json`);
/** atan(0.9/1.2). */
const FULL_DEG = (Math.atan2(0.9, 1.2) * 180) / Math.PI;
const STEPS = [0, 0.25, 0.5, 0.75, 1];

const at = (together: number, bone: string, x: number): Pose => ({
  bones: { [bone]: { move: [x, 0, 0] } },
  switches: { 'wind.together': together },
});

function withDrivers(rig: Rig, times: number, map: DriverMap): Rig {
  return {
    ...rig,
    drivers: rig.drivers!.map((driver) => ({
      ...driver,
      inputs: driver.inputs.map((input) => ({ ...input, times })),
      map,
    })),
  };
}

// Check values: the arithmetic on the page. Slerp by weight is exact in the angle (glTF 2.0, appendix C).
describe('lesson 5.3 says what the solver does', () => {
  test.each([
    [0, 1, 36.87],
    [0.25, 0.75, 27.65],
    [0.5, 0.5, 18.43],
    [0.75, 0.25, 9.22],
    [1, 0, 0],
  ])('the table: together %d, weight %d, %d°', (together, weight, angleDeg) => {
    const { weights, aside } = solved(letGo, at(together, 'wind_left', 0.9));
    expectClose(weights['vane_left.own']!, weight, 1e-15);
    expectClose(aside('vane_left'), angleDeg, 5e-3);
    expectClose(aside('vane_right'), 0, 1e-15);
  });

  test('where both links agree the switch moves nothing', () => {
    for (const s of STEPS) {
      const { aside } = solved(letGo, at(s, 'wind', 0.9));
      expectClose([aside('vane_left'), aside('vane_right')], [FULL_DEG, FULL_DEG], 1e-13);
    }
  });

  test('with both links fading s(1 − s) of it is missing, a quarter half way', () => {
    for (const s of STEPS) {
      const { aside } = solved(sagging, at(s, 'wind', 0.9));
      expectClose(aside('vane_left'), FULL_DEG * (1 - s * (1 - s)), 1e-13);
    }
    const half = solved(sagging, at(0.5, 'wind', 0.9)).aside('vane_left');
    expectClose(half, 27.65, 5e-3);
    expectClose(FULL_DEG - half, 9.22, 5e-3);
  });

  test('with both fading the vane is at (1 − s)t + s²p, with the first whole at (1 − s)t + sp', () => {
    const pose = (s: number): Pose => ({
      bones: { wind: { move: [0.5, 0, 0] }, wind_left: { move: [-0.9, 0, 0] } },
      switches: { 'wind.together': s },
    });
    const p = solved(letGo, pose(1)).aside('vane_left');
    const t = solved(letGo, pose(0)).aside('vane_left');
    for (const s of STEPS) {
      expectClose(solved(sagging, pose(s)).aside('vane_left'), (1 - s) * t + s * s * p, 1e-12);
      expectClose(solved(letGo, pose(s)).aside('vane_left'), (1 - s) * t + s * p, 1e-12);
    }
  });

  test('1 − s written another way is the same; minus s is never anything but 0, and says so', () => {
    const shifted = withDrivers(letGo, -1, {
      keys: [
        [-1, 0],
        [0, 1],
      ],
    });
    const straight = { keys: [[0, 0] as const, [1, 1] as const], beyond: 'extend' as const };
    const minus = withDrivers(letGo, -1, straight);
    for (const s of STEPS) {
      const pose = at(s, 'wind_left', 0.9);
      expectClose(solved(shifted, pose).weights['vane_left.own']!, 1 - s, 1e-15);
      expect(solved(minus, pose).weights['vane_left.own']).toBe(0);
    }
    expect(solved(minus, at(0.5, 'wind_left', 0.9)).flags).toContain('weight-clamped');
  });

  test('the Heron at 35 of 100 looks 26° aside, and never with the sign in place of the map', () => {
    const pose = { switches: { 'body.calm': 35 } };
    const { weights, aside } = solved(heron, pose);
    expectClose(weights['heron_head.watch']!, 0.65, 1e-15);
    expectClose(aside('heron_head'), 26, 1e-12);
    const minus = withDrivers(heron, -1, {
      keys: [
        [0, 0],
        [100, 1],
      ],
    });
    for (const calm of [0, 35, 100]) {
      expect(solved(minus, { switches: { 'body.calm': calm } }).weights['heron_head.watch']).toBe(0);
    }
    const upright = withDrivers(heron, 1, {
      keys: [
        [0, 0],
        [100, 1],
      ],
    });
    expectClose(solved(upright, pose).aside('heron_head'), 14, 1e-12);
  });
});
