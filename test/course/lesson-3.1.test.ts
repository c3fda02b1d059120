import { describe, expect, test } from 'vitest';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/3.1-the-shortest-turn';
const vane = rigOf(`${folder}/vane.json`);
const behind = rigOf(`${folder}/vane-behind.json`);
const heron = rigOf(`${folder}/heron-head.json`);
type V = readonly number[];
const dot = (a: V, b: V) => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
const cross = (a: V, b: V) => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];
const unit = (a: V) => a.map((part) => part / Math.sqrt(dot(a, a)));
const determinant = (rows: readonly V[]) => dot(rows[0]!, cross(rows[1]!, rows[2]!));

/** The turn by a unit quaternion, as it carries a vector: v + 2w(u × v) + 2u × (u × v). */
function turned([x, y, z, w]: V, v: V): number[] {
  const u = [x!, y!, z!];
  const once = cross(u, v);
  const twice = cross(u, once);
  return v.map((part, i) => part + 2 * w! * once[i]! + 2 * twice[i]!);
}

/** R = c·I + [v]× + v·vᵀ/(1 + c), without any care. */
function careless(a: V, d: V): number[][] {
  const [x, y, z] = cross(a, d) as [number, number, number];
  const c = dot(a, d);
  const k = 1 / (1 + c);
  return [
    [c + k * x * x, k * x * y - z, k * x * z + y],
    [k * x * y + z, c + k * y * y, k * y * z - x],
    [k * x * z - y, k * y * z + x, c + k * z * z],
  ];
}

// Check value: +z onto (0.6, 0, 0.8) is (0, 1, 0, 3)/√10, by the rule "smallest possible rotation" of
// VRMC_node_constraint 1.0, with which five public libraries agree. The rest is arithmetic on the page.
describe('lesson 3.1 says what the solver does', () => {
  test('the worked example: +z onto the kite', () => {
    const kite = moved('kite', 0.9);
    const q = [0, 1, 0, 3].map((part) => part / Math.sqrt(10));
    const { axis, aside } = solved(vane, kite);
    expectClose(axis('vane', 'x'), turned(q, [1, 0, 0]), 1e-15);
    expectClose(axis('vane', 'y'), turned(q, [0, 1, 0]), 1e-15);
    expectClose(axis('vane', 'z'), [0.6, 0, 0.8], 1e-15);
    expectClose(
      axis('vane', 'z').map((part) => 0.3 * part),
      [0.18, 0, 0.24],
      1e-15,
    );
    expectClose(aside('vane'), 36.87, 5e-3);
    expectClose((2 * Math.asin(q[1]!) * 180) / Math.PI, 36.87, 5e-3);
  });

  test('nothing moves at rest, and a kite that only turns moves nothing', () => {
    expect(solved(vane, {}).axis('vane', 'z')).toEqual([0, 0, 1]);
    const spun = solved(vane, { bones: { kite: { move: [0.9, 0, 0], turn: [0, 0.6, 0, 0.8] } } });
    expect(spun.axis('vane', 'z')).toEqual(solved(vane, moved('kite', 0.9)).axis('vane', 'z'));
  });

  test('half the weight is half the angle', () => {
    const halved = withWeight(0.5);
    expectClose(solved(halved, moved('kite', 0.9)).aside('vane'), 18.43, 5e-3);
  });

  test('0.2 µm off the line 10 m behind, the careless matrix shrinks volumes to 0.80 and 1 + c is 11 % too large', () => {
    const d = unit([2e-7, 0, -10]);
    const exact = 0.5 * (2e-7 / 10) ** 2;
    expectClose((1 + dot([0, 0, 1], d)) / exact, 1.11, 5e-3);
    expectClose(determinant(careless([0, 0, 1], d)), 0.8, 5e-3);
    expect(1 + dot([0, 0, 1], unit([1e-7, 0, -10]))).toBe(0);
  });

  test('there the solver still makes a turn onto the target', () => {
    for (const offM of [2e-7, 1e-7]) {
      const { axis } = solved(vane, moved('kite', offM, 0, -11.2));
      const [x, y, z] = (['x', 'y', 'z'] as const).map((letter) => axis('vane', letter));
      expectClose(determinant([x!, y!, z!]), 1, 1e-15);
      expectClose(z!, unit([offM, 0, -10]), 1e-15);
    }
  });

  test('exactly behind it is half a turn about x', () => {
    const { axis } = solved(vane, moved('kite', 0, 0, -2.4));
    expectClose(axis('vane', 'x'), [1, 0, 0], 1e-15);
    expectClose(axis('vane', 'z'), [0, 0, -1], 1e-15);
  });

  test('as the kite passes behind the fin goes once round, half of it in 24 cm', () => {
    const fin = (x: number) => solved(behind, moved('kite', x)).axis('vane', 'y');
    expect(fin(0.6)[1]).toBeGreaterThan(0.9);
    expect(fin(-0.6)[1]).toBeGreaterThan(0.9);
    expectClose(fin(0)[1]!, -0.995, 5e-4);
    expectClose(fin(0.12)[1]!, 0, 0.01);
    expectClose(fin(-0.12)[1]!, 0, 0.01);
    expect(Math.sign(fin(0.12)[0]!)).toBe(-Math.sign(fin(-0.12)[0]!));
    for (let x = -0.6; x <= 0.6; x += 0.05) {
      expectClose(solved(behind, moved('kite', x)).axis('vane', 'z'), unit([x, 0.12, -1.2]), 1e-14);
    }
  });

  test('the Heron bends down as the answer says', () => {
    const q = [1, 0, 0, 2].map((part) => part / Math.sqrt(5));
    const { axis } = solved(heron, {});
    expectClose(axis('heron_head', 'z'), [0, -0.8, 0.6], 1e-15);
    expectClose(axis('heron_head', 'y'), turned(q, [0, 1, 0]), 1e-15);
    expectClose((2 * Math.asin(q[0]!) * 180) / Math.PI, 53.13, 5e-3);
    const [, down, ahead] = solved(withWeight(0.5, heron), {}).axis('heron_head', 'z');
    expectClose((0.6 * -down!) / ahead!, 0.3, 1e-12);
  });
});

function withWeight(weight: number, rig = vane) {
  return {
    ...rig,
    bones: rig.bones.map((bone) =>
      bone.links ? { ...bone, links: bone.links.map((link) => ({ ...link, weight })) } : bone,
    ),
  };
}
