import { describe, expect, test } from 'vitest';
import { packPose, restPose, type TurnOrder } from '../../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../../support/close.ts';
import { bone, rigOf } from '../degenerate/build.ts';
import { programFor, solveRig, turnOf } from '../solveRig.ts';

const WIND = { name: 'together', min: 0, max: 1, default: 0.25, sliding: true };

test('a pose that says nothing is the rest pose', () => {
  const program = programFor(rigOf([bone('post'), bone('wind', { switches: [WIND] })]));
  const rest = [0, 0, 0, 0, 0, 0, 1, 1, 1, 1];
  expect([...packPose(program, {})]).toEqual([...rest, ...rest, 0.25]);
  expect(packPose(program, { bones: { post: {} }, switches: {} })).toEqual(restPose(program));
});

test('packs into a longer array, over what stood there', () => {
  const program = programFor(rigOf([bone('wind', { switches: [WIND] })]));
  const into = new Float64Array(20).fill(7);
  const pose = { bones: { wind: { move: [1, 2, 3], size: [2, 3, 4] } }, switches: { 'wind.together': 1 } } as const;
  expect(packPose(program, pose, into)).toBe(into);
  expect([...into]).toEqual([1, 2, 3, 0, 0, 0, 1, 2, 3, 4, 1, 7, 7, 7, 7, 7, 7, 7, 7, 7]);
});

test('a quaternion a little off unit length is made one', () => {
  const program = programFor(rigOf([bone('post')]));
  const packed = packPose(program, { bones: { post: { turn: [0, 0, 0.6 * 1.0000005, 0.8 * 1.0000005] } } });
  expectClose(packed.subarray(3, 7), [0, 0, 0.6, 0.8], 2e-16);
});

describe('angles', () => {
  // SciPy, Rotation class docstring; three, gl-matrix, wgpu-matrix and quaternion agree (check value A1).
  test('xyz is Rx·Ry·Rz', () => {
    const turn = turnOf(
      solveRig(rigOf([bone('post')]), { bones: { post: { turn: { angles: [30, 60, 45] } } } }),
      'post',
    );
    expectSameTurn(turn, [0.39190384, 0.36042341, 0.43967974, 0.72331741], 1e-16);
  });
  // SciPy `as_rotvec`: intrinsic Y −90° then X −90° is 120° about (−1, −1, −1) (check value A4).
  test('yxz turns about y first of the three', () => {
    const rig = rigOf([bone('post', { turnOrder: 'yxz' })]);
    const turn = turnOf(solveRig(rig, { bones: { post: { turn: { angles: [-90, -90, 0] } } } }), 'post');
    expectSameTurn(turn, [-0.5, -0.5, -0.5, 0.5], 1e-15);
  });
  test.each<TurnOrder>(['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'])('%s is the product of its three turns', (order) => {
    const angles = [20, -50, 110] as const;
    const alone = (axis: number) => {
      const one: [number, number, number] = [0, 0, 0];
      one[axis] = angles[axis];
      return { turn: { angles: one } };
    };
    // A chain of three bones at one place, each turned about one axis, is that product.
    const chain = rigOf([bone('a'), bone('b', { parent: 'a' }), bone('c', { parent: 'b' })]);
    const [a, b, c] = [...order].map((axis) => alone('xyz'.indexOf(axis)));
    const expected = solveRig(chain, { bones: { a, b, c } }).bones.c.matrix;
    const rig = rigOf([bone('post', { turnOrder: order })]);
    expectClose(solveRig(rig, { bones: { post: { turn: { angles } } } }).bones.post.matrix, expected, 1e-15);
  });
});
