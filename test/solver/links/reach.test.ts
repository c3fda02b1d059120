/** Numbers from outside for reach. Its degenerate cases stand in ../degenerate. */
import { describe, expect, test } from 'vitest';
import type { Link, Rig, Vec3 } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, rigOf, tipOf } from '../degenerate/build.ts';
import { solveRig } from '../solveRig.ts';

const QUARTER_ABOUT_X = [Math.SQRT1_2, 0, 0, Math.SQRT1_2] as const;

/** Boom and jib of these lengths in line along +z from the origin, hinge +x; the hook is where the jib's tip should go. */
const crane = (boom: number, jib: number, hook: Vec3, pole?: Vec3, more: Partial<Link> = {}): Rig =>
  rigOf([
    bone('hook', { at: hook }),
    ...(pole ? [bone('pole', { at: pole })] : []),
    bone('boom', { length: boom }),
    bone('jib', {
      parent: 'boom',
      at: [0, 0, boom],
      length: jib,
      links: [
        { name: 'lift', kind: 'reach', target: { bone: 'hook' }, ...(pole && { pole: { bone: 'pole' } }), ...more },
      ] as Link[],
    }),
  ]);

const angleDeg = (a: number[], b: number[]) =>
  (Math.acos(a.reduce((sum, part, i) => sum + part * b[i], 0)) * 180) / Math.PI;

// Law of cosines, Euclid II.12–13; check value F1 (agrees with MuJoCo, urdf-loader, two numeric solvers).
test('3 and 4 reach 5: the elbow at (1.8, −2.4), 53.13010235° off and bent square', () => {
  const result = solveRig(crane(3, 4, [5, 0, 0], [0, -1, 0]));
  expectClose(baseOf(result, 'jib'), [1.8, -2.4, 0], 1e-14);
  expectClose(tipOf(result, 'jib', 4), [5, 0, 0], 1e-14);
  expectClose(angleDeg(column(result, 'boom', 'z'), [1, 0, 0]), 53.13010235, 5e-9);
  expectClose(angleDeg(column(result, 'boom', 'z'), column(result, 'jib', 'z')), 90, 1e-12);
});

// BMC, KinematicChain.ipynb: planar 2R with ½ and ½; check values F2 and F3, both branches.
test.each<[Vec3, Vec3, Vec3]>([
  [
    [-0.5, 0.5, 0],
    [0, 1, 0],
    [0, 0.5, 0],
  ],
  [
    [-0.5, 0.5, 0],
    [-1, 0, 0],
    [-0.5, 0, 0],
  ],
  [
    [0, Math.SQRT1_2, 0],
    [1, 0, 0],
    [Math.SQRT1_2 / 2, Math.SQRT1_2 / 2, 0],
  ],
  [
    [0, Math.SQRT1_2, 0],
    [-1, 0, 0],
    [-Math.SQRT1_2 / 2, Math.SQRT1_2 / 2, 0],
  ],
])('½ and ½ reach %j, pole toward %j: elbow at %j', (hook, pole, elbow) => {
  expectClose(baseOf(solveRig(crane(0.5, 0.5, hook, pole)), 'jib'), elbow, 1e-15);
});

// Lynch & Park, Modern Robotics, ch. 6 (check value F4): no solution outside [|l₁ − l₂|, l₁ + l₂], one on the edge.
describe('beyond its bounds', () => {
  test('it stretches toward a target too far', () => {
    const result = solveRig(crane(3, 4, [0, 9, 0], [1, 0, 0]));
    expectClose(tipOf(result, 'jib', 4), [0, 7, 0], 1e-14);
  });
  test('it folds toward a target too near', () => {
    const result = solveRig(crane(3, 4, [0, 0.5, 0], [1, 0, 0]));
    expectClose(baseOf(result, 'jib'), [0, -3, 0], 1e-14);
    expectClose(tipOf(result, 'jib', 4), [0, 1, 0], 1e-14);
  });
});

test('the hinge stays square to both bones, and the pole on the elbow’s side', () => {
  const result = solveRig(crane(0.4, 0.3, [0.2, 0.3, 0.1], [0.1, 0.9, -0.4]));
  const [boom, jib] = [column(result, 'boom', 'x'), column(result, 'jib', 'x')];
  expectClose(boom, jib, 1e-14);
  expectClose(tipOf(result, 'jib', 0.3), [0.2, 0.3, 0.1], 1e-15);
});

// No source: our own rule. Shortest turns alone would let the lower bone twist about itself.
test('a bent limb without a pole keeps bending to its own side', () => {
  const rig = rigOf([
    bone('hook', { at: [0, 0.1, 0.7] }),
    bone('boom', { turned: [-Math.sin(0.2), 0, 0, Math.cos(0.2)] }),
    bone('jib', {
      parent: 'boom',
      at: [0, 0.5 * Math.sin(0.4), 0.5 * Math.cos(0.4)],
      turned: QUARTER_ABOUT_X,
      links: [{ name: 'lift', kind: 'reach', target: { bone: 'hook' } }],
    }),
  ]);
  const result = solveRig(rig);
  expectClose(tipOf(result, 'jib'), [0, 0.1, 0.7], 1e-15);
  expect(baseOf(result, 'jib')[1]).toBeGreaterThan(0.2);
  expectClose(column(result, 'jib', 'x'), [1, 0, 0], 1e-15);
});

test('at half weight each bone has half of its turn, and the jib stays on the boom', () => {
  const [full, half] = [1, 0.5].map((weight) => solveRig(crane(3, 4, [5, 0, 0], [0, -1, 0], { weight })));
  // Both bones rest unturned, so their columns are their turns, and half a turn twice is the whole.
  for (const name of ['boom', 'jib']) {
    const turn = columns(half, name);
    const twice = [0, 3, 6].flatMap((column) =>
      [0, 1, 2].map((row) => [0, 1, 2].reduce((sum, i) => sum + turn[3 * i + row] * turn[column + i], 0)),
    );
    expectClose(twice, columns(full, name), 1e-15);
  }
  expectClose(baseOf(half, 'jib'), tipOf(half, 'boom', 3), 1e-14);
});
