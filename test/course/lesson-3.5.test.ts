import { describe, test } from 'vitest';
import type { Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/3.5-vergence';
const otter = rigOf(`${folder}/two-aims.json`);
const equalHalves = rigOf(`${folder}/equal-halves.json`);
const DEG = Math.PI / 180;

/** The same eyes at another distance from each other, in metres. */
const apart = (p: number): Rig => ({
  ...otter,
  bones: otter.bones.map((bone) => {
    if (!bone.name.startsWith('eye')) return bone;
    return { ...bone, rest: { ...bone.rest, base: [(bone.name === 'eye_left' ? p : -p) / 2, 0, 0] } };
  }),
});

/** Both eyes on a point at the height of the eyes, in metres: degrees to the left, and the angle between them. */
function looking(rig: Rig, x: number, z: number) {
  const { aside } = solved(rig, moved('crab', x, 0, z - 0.4));
  const [left, right] = [aside('eye_left'), aside('eye_right')];
  return { left, right, version: (left + right) / 2, vergence: right - left };
}
const ahead = (p: number, d: number) => looking(apart(p), 0, d).vergence;

describe('lesson 3.5 says what the solver does', () => {
  // I9: 2·atan(p / 2d) (standard geometry, from memory); I10 and I11: its values at 60 and 63 mm (computed).
  test.each([
    [0.25, 13.6855, 14.3628, 24],
    [0.4, 8.5783, 9.0055, 15],
    [0.5, 6.8673, 7.2097, 12],
    [1, 3.4367, 3.6084, 6],
    [6, 0.573, 0.6016, 1],
  ])('at %d m: %d° for 60 mm, %d° for 63 mm, %d Δ', (d, at60, at63, demand) => {
    expectClose(ahead(0.06, d), at60, 1e-4);
    expectClose(ahead(0.063, d), at63, 1e-4);
    // I12: p in centimetres over d in metres (visionlist 2018; 15 at 0.4 m from memory).
    expectClose(2 * 100 * Math.tan((ahead(0.06, d) / 2) * DEG), demand, 1e-9);
  });

  // I8: 100·tan α (medical dictionary).
  test('a prism dioptre is 0.573°, seven are 4.00°', () => {
    expectClose(Math.atan(0.01) / DEG, 0.573, 5e-4);
    expectClose(Math.atan(0.07) / DEG, 4, 5e-3);
  });

  // The rest: arithmetic on the page, from right triangles.
  test('to the side the eyes turn as the worked example says', () => {
    const { left, right, version, vergence } = looking(otter, 0.24, 0.32);
    expectClose([left, right], [Math.atan2(0.21, 0.32) / DEG, Math.atan2(0.27, 0.32) / DEG], 1e-10);
    expectClose([left, right, version, vergence], [33.27, 40.16, 36.72, 6.88], 6e-3);
    expectClose([36.87 - left, right - 36.87], [3.6, 3.29], 6e-3);
    expectClose((2 * Math.atan(0.03 / 0.32)) / DEG, 10.71, 5e-3);
  });

  test('the tangent is p·h over d² − p²/4, the crab above the eyes too', () => {
    for (const [x, y, z] of [
      [0.1, 0.2, 0.3],
      [-0.3, -0.1, 0.2],
      [0, 0.1, 0.25],
    ] as const) {
      const { axis } = solved(otter, moved('crab', x, y, z - 0.4));
      const cosine = axis('eye_left', 'z').reduce((sum, c, i) => sum + c * axis('eye_right', 'z')[i]!, 0);
      const tangent = (0.06 * Math.hypot(y, z)) / (x * x + y * y + z * z - 0.06 ** 2 / 4);
      expectClose(Math.acos(cosine), Math.atan(tangent), 1e-10);
    }
  });

  test('carried round at 40 cm the vergence shrinks to half at 60°', () => {
    expectClose(looking(otter, 0.4 * Math.sin(60 * DEG), 0.2).vergence / ahead(0.06, 0.4), 0.5, 0.005);
  });

  test('on a circle through both eyes it is the same', () => {
    const radius = 0.2;
    const middle = Math.sqrt(radius ** 2 - 0.03 ** 2);
    const at = (deg: number) =>
      looking(otter, radius * Math.sin(deg * DEG), middle + radius * Math.cos(deg * DEG)).vergence;
    for (const deg of [20, 50, -80]) expectClose(at(deg), at(0), 1e-10);
  });

  test('equal halves meet in the crab straight ahead and pass it by 6 and 12 mm to the side', () => {
    const missMm = (eye: string, x: number, z: number) => {
      const { axis, base } = solved(equalHalves, moved('crab', x, 0, z - 0.3));
      const [dx, dz] = [x - base(eye)[0]!, z - base(eye)[2]!];
      return 1000 * (dx * axis(eye, 'z')[2]! - dz * axis(eye, 'z')[0]!);
    };
    expectClose(missMm('eye_left', 0, 0.3), 0, 0.01);
    expectClose(missMm('eye_right', 0, 0.3), 0, 0.01);
    expectClose(missMm('eye_left', 0.15, 0.15), 6, 0.1);
    expectClose(missMm('eye_right', 0.15, 0.15), -12, 0.1);
  });

  test('Toad’s eyes and his fly are as the answer says', () => {
    const toad = apart(0.12);
    const { left, right, vergence } = looking(toad, 0.18, 0.24);
    expectClose([left, right, vergence], [26.57, 45, 18.43], 6e-3);
    expectClose((2 * Math.atan(6 / 30)) / DEG, 22.62, 5e-3);
    expectClose(looking(toad, 0, 0.3697).vergence, vergence, 0.01);
    expectClose(12 / Math.tan(vergence * DEG), 36, 1e-10);
    expectClose(looking(toad, 0, 0.4).vergence, 17.06, 5e-3);
  });
});
