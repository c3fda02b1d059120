import { describe, expect, test } from 'vitest';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/3.3-up-vectors';
const herons = rigOf(`${folder}/two-herons.json`);
const overhead = rigOf(`${folder}/overhead.json`);
const DEG = Math.PI / 180;

type V = readonly number[];
const dot = (a: V, b: V) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);

/** Both herons looking along a direction, and by how many degrees the shortest turn leans to the left of upright. */
function looking([x, y, z]: readonly [number, number, number]) {
  const { axis } = solved(herons, moved('fish', x, y, z - 1));
  const lean = Math.atan2(
    dot(axis('shortest', 'y'), axis('upright', 'x')),
    dot(axis('shortest', 'y'), axis('upright', 'y')),
  );
  return { axis, leanDeg: lean / DEG };
}
const toward = (hDeg: number, vDeg: number) =>
  [
    Math.sin(hDeg * DEG) * Math.cos(vDeg * DEG),
    Math.sin(vDeg * DEG),
    Math.cos(hDeg * DEG) * Math.cos(vDeg * DEG),
  ] as const;

describe('lesson 3.3 says what the solver does', () => {
  // Check values C8 (cross products; agree with two open matrix libraries) and C9 (rule of VRMC_node_constraint 1.0, aim).
  test('both heads at (1, 1, 1) have the ears and crests of the worked example, 15° apart', () => {
    const { axis, leanDeg } = looking([1, 1, 1]);
    expectClose(axis('upright', 'x'), [Math.SQRT1_2, 0, -Math.SQRT1_2], 1e-7);
    expectClose(axis('upright', 'y'), [-0.40824829, 0.81649658, -0.40824829], 1e-7);
    expectClose(axis('shortest', 'x'), [0.78867513, -0.21132487, -0.57735027], 1e-7);
    expectClose(leanDeg, 15, 1e-10);
  });

  // I17: Nakayama, Ciuffreda and Schor 1983, as coded in gkaModelEye; I16: Duane's Ophthalmology, vol. 8 ch. 23 fig. 4.
  test.each([
    [10, 0.88, 1],
    [20, 3.56, 3],
    [30, 8.21, 8],
    [40, 15.09, 15],
  ])('%d° out and up: %d° from the formula, %d° as listed', (each, formula, listed) => {
    const { leanDeg } = looking(toward(each, each));
    const half = Math.tan((each / 2) * DEG);
    expectClose(leanDeg, (2 * Math.atan(half * half)) / DEG, 1e-10);
    expectClose(leanDeg, formula, 5e-3);
    expectClose(leanDeg, listed, 0.6);
  });

  test('the crest leans with the target above, against it below, and not on the axes', () => {
    expect(looking(toward(30, 40)).leanDeg).toBeGreaterThan(1);
    expect(looking(toward(-30, 40)).leanDeg).toBeLessThan(-1);
    expectClose(looking(toward(-30, -40)).leanDeg, 11.14, 5e-3);
    expectClose(looking(toward(30, 0)).leanDeg, 0, 1e-10);
    expectClose(looking(toward(0, 40)).leanDeg, 0, 1e-10);
  });

  test('the held crest swings the ears by 90° while the lark flies 10 cm past at 5 cm; the held ear does not', () => {
    const earsAt = (z: number, height = 0) => {
      const { axis } = solved(overhead, moved('lark', 0, height, z));
      const [x, , ahead] = axis('crest_held', 'x');
      return { swungDeg: Math.atan2(-ahead!, x!) / DEG, heldX: axis('ears_held', 'x')[0]! };
    };
    for (const height of [0, 5]) {
      expectClose(earsAt(0.05, height).swungDeg, 45, 1e-10);
      expectClose(earsAt(-0.05, height).swungDeg, 135, 1e-10);
    }
    for (const z of [1, 0.05, 0, -0.05, -1]) expect(earsAt(z).heldX).toBeGreaterThan(0.998);
  });

  test('a lark exactly overhead leaves the roll undefined', () => {
    const { flags } = solved(overhead, moved('lark', -0.05));
    expect(flags).toContain('up-undefined');
  });
});
