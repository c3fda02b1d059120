import { describe, expect, test } from 'vitest';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/6.1-a-whole-gaze';
const otter = rigOf(`${folder}/whole.json`);
const over = rigOf(`${folder}/meets-over-all.json`);
const DEG = Math.PI / 180;
const deg = (opposite: number, adjacent: number) => Math.atan2(opposite, adjacent) / DEG;
/** Half of the distance between Otter's eyes, metres. */
const OTTER_HALF = 0.03;

/** Every x, and what the drivers of converge move, `factor` times as large: the same head with its eyes farther apart. */
function wider(rig: Rig, factor: number): Rig {
  const bones = rig.bones.map((bone) => {
    const [x, y, z] = bone.rest.base;
    return { ...bone, rest: { ...bone.rest, base: [x * factor, y, z] as const } };
  });
  const drivers = rig.drivers!.map((driver) => {
    if (!('channel' in driver.output)) return driver;
    return { ...driver, map: { ...driver.map, keys: driver.map.keys.map(([x, y]) => [x, y * factor] as const) } };
  });
  return { ...rig, bones, drivers };
}
const toad = wider(otter, 0.07 / OTTER_HALF);

const pose = (x: number, z: number, converge: number, together = 0): Pose => ({
  bones: { pearl: { move: [x, 0, z - 0.4] } },
  switches: { 'pearl.converge': converge, 'pearl.together': together },
});

/** Degrees to the left of each eye, and the angle between the lines; the pearl at x and z, metres. */
function looking(rig: Rig, x: number, z: number, converge: number, together = 0) {
  const { aside } = solved(rig, pose(x, z, converge, together));
  const [left, right] = [aside('eye_left'), aside('eye_right')];
  return { left, right, vergence: right - left };
}

// Check values: arithmetic on the page, from right triangles. Slerp by weight is exact in the angle (glTF 2.0, appendix C).
describe('lesson 6.1 says what the solver does', () => {
  test.each([
    ['converge 0', 0, 0, 33.69, 33.69, 0],
    ['converge 0.5', 0.5, 0, 31.66, 35.63, 3.97],
    ['converge 1', 1, 0, 29.54, 37.48, 7.94],
    ['converge 1, together 0.5', 1, 0.5, 31.61, 35.58, 3.97],
    ['together 1', 0, 1, 33.69, 33.69, 0],
    ['together 1, converge 1', 1, 1, 33.69, 33.69, 0],
  ])('the table: %s', (_, converge, together, leftDeg, rightDeg, betweenDeg) => {
    const { left, right, vergence } = looking(otter, 0.2, 0.3, converge, together);
    expectClose([left, right, vergence], [leftDeg, rightDeg, betweenDeg], 6e-3);
  });

  test('the bearing sees the pearl at 33.69°, and the sightline is 36.06 cm long', () => {
    const { aside, axis } = solved(otter, pose(0.2, 0.3, 1));
    expectClose(aside('bearing'), 33.69, 5e-3);
    expectClose(100 * 0.4 * Math.hypot(...axis('sightline', 'z')), 36.06, 5e-3);
  });

  // I10 gives 8.5783° at 40 cm for 60 mm (computed); 2·atan(p / 2d) is standard geometry, from memory.
  test('vergence of Otter and Toad at converge 1, on the middle line and off it', () => {
    expectClose(looking(otter, 0, 0.4, 1).vergence, 8.5783, 1e-4);
    expectClose(looking(otter, 0, 0.3, 1).vergence, 11.42, 5e-3);
    expectClose(looking(toad, 0, 0.4, 1).vergence, 19.85, 5e-3);
    expectClose(looking(toad, 0, 0.3, 1).vergence, 26.27, 6e-3);
    expectClose(looking(toad, 0.2, 0.3, 1).vergence, 18.56, 5e-3);
  });

  test('converge c is the vergence of eyes c times as far apart', () => {
    for (const [rig, half] of [
      [otter, OTTER_HALF],
      [toad, 0.07],
    ] as const) {
      for (const c of [0, 0.25, 0.5, 1]) {
        for (const [x, z] of [
          [0, 0.4],
          [0.2, 0.3],
          [-0.15, 0.5],
        ] as const) {
          const { left, right, vergence } = looking(rig, x, z, c);
          expectClose([left, right], [deg(x - c * half, z), deg(x + c * half, z)], 1e-10);
          expectClose(vergence, deg(2 * c * half * z, x * x + z * z - (c * half) ** 2), 1e-10);
        }
      }
    }
  });

  test('together s leaves 1 − s of the vergence', () => {
    const alone = looking(otter, 0.2, 0.3, 1).vergence;
    for (const s of [0.25, 0.5, 0.75]) expectClose(looking(otter, 0.2, 0.3, 1, s).vergence, (1 - s) * alone, 1e-10);
  });

  test('at converge 0 the switch together moves nothing, wherever the pearl is', () => {
    const still = looking(otter, 0.2, 0.3, 0);
    for (const s of [0.3, 0.7, 1]) expectClose(looking(otter, 0.2, 0.3, 0, s).left, still.left, 1e-10);
  });

  test('the failure: converge laid over everything crosses the eyes at together 1, and hides at converge 0', () => {
    const crossed = looking(over, 0.1, 0.4, 1, 1);
    expectClose(crossed.vergence, looking(otter, 0.1, 0.4, 1).vergence, 1e-10);
    expect(crossed.vergence).toBeGreaterThan(5);
    expectClose(looking(over, 0.1, 0.4, 0, 1).vergence, 0, 1e-10);
    expectClose(looking(otter, 0.1, 0.4, 1, 1).vergence, 0, 1e-10);
  });

  test('the lamps of the crane: ten times as far ahead, 0.8 m to either side', () => {
    // Angles do not change with size: 4 m and 0.8 m are 0.4 m and 0.08 m.
    const lamps = wider(otter, 0.08 / OTTER_HALF);
    expectClose(looking(lamps, 0, 0.4, 1).vergence, 22.62, 5e-3);
    expectClose(looking(lamps, 0, 0.4, 0.5).vergence, 11.42, 5e-3);
    expectClose(looking(lamps, 0, 0.4, 0.5, 0.25).vergence, 8.57, 6e-3);
  });
});
