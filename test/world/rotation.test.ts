import { Euler, Quaternion } from 'three';
import { describe, expect, test } from 'vitest';
import type { Quat, TurnOrder, Vec3 } from '../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../support/close.ts';
import { between, pick, seeded } from '../support/random.ts';
import { about, axisAngle, bone, columns, stand } from './stage.ts';

/** A1's quaternion, to the eight digits that SciPy prints. */
const SCIPY_TURN: Quat = [0.39190384, 0.36042341, 0.43967974, 0.72331741];

const turned = (angles: Vec3, turnOrder: TurnOrder) =>
  stand([bone('vane', { turnOrder })], { vane: { turn: { angles } } }).vane;

/** SciPy, scipy.spatial.transform.Rotation, docstring examples (seen): lower-case axes are extrinsic. */
describe('SciPy Rotation', () => {
  test("A1: from_euler('zyx', [45, 60, 30]) is Rx(30)·Ry(60)·Rz(45)", () => {
    const { turn } = turned([30, 60, 45], 'xyz');
    expectSameTurn(turn, SCIPY_TURN, 1e-15);
    expectClose(turn, SCIPY_TURN, 5e-9);
  });

  test('A2: that turn carries (1, 2, 3)', () => {
    expectClose(turned([30, 60, 45], 'xyz').at([1, 2, 3]), [2.24452282, 0.78093109, 2.89002836], 1e-8);
  });

  test('A3: p * q turns by q first', () => {
    const bones = [bone('post'), bone('vane', { parent: 'post' })];
    const { vane } = stand(bones, {
      post: { turn: [0, 0, Math.SQRT1_2, Math.SQRT1_2] },
      vane: { turn: about([1, 0, 0], 45) },
    });
    expectClose(vane.turn, [0.27059805, 0.27059805, 0.65328148, 0.65328148], 1e-8);
  });

  test('A4: two quarter turns, about Y and then about the new X, are a third of a turn', () => {
    const { axis, angleDeg } = axisAngle(turned([-90, -90, 0], 'yxz').turn);
    const each = -69.2820323;
    expectClose(
      axis.map((a) => a * angleDeg),
      [each, each, each],
      1e-6,
    );
  });
});

test('A5: quat2rotm of w, x, y, z = 0.7071, 0.7071, 0, 0, four digits printed (MathWorks quat2rotm page, seen)', () => {
  const { vane } = stand([bone('vane')], { vane: { turn: [Math.SQRT1_2, 0, 0, Math.SQRT1_2] } });
  expectClose(vane.matrix, columns([1, 0, 0], [0, 0, -1], [0, 1, 0]), 1e-4);
});

test('A8: the turn by 120° about (1, 1, 1) carries x to y to z (Lynch and Park, Modern Robotics, MatrixLog3, seen)', () => {
  const { vane } = stand([bone('vane')], { vane: { turn: [0.5, 0.5, 0.5, 0.5] } });
  expectClose(vane.matrix, columns([0, 0, 1], [1, 0, 0], [0, 1, 0]), 1e-15);
});

test('A10: the inverse of a rigid transform (Modern Robotics, TransInv, seen): a follower undoes its source at rest', () => {
  const post = bone('post', { base: [0, 0, 3], turn: about([1, 0, 0], 90) });
  const vane = bone('vane', { links: [{ name: 'ride', kind: 'follow', source: 'post', offset: 'keep' }] });
  const there = stand([post, vane], { post: { move: [0, -3, 0], turn: about([1, 0, 0], -90) } });
  expectClose(there.post.matrix, columns([1, 0, 0], [0, 1, 0], [0, 0, 1]), 1e-15);
  expectClose(there.vane.matrix, columns([1, 0, 0, 0], [0, 0, 1, -3], [0, -1, 0, 0]), 1e-15);
});

describe('A11: rotate3d(2, 1, 1, 180deg) (web-platform-tests, rotate-interpolation near the x axis, m12 seen)', () => {
  const turn = about([2, 1, 1], 180);
  test('its quaternion and row 2, column 1 of its matrix', () => {
    expectClose(turn, [0.81649658, 0.40824829, 0.40824829, 0], 1e-8);
    expectClose(stand([bone('vane')], { vane: { turn } }).vane.matrix[1], 2 / 3, 1e-15);
  });
  test('survives being taken apart and put together by a link', () => {
    const follower = bone('echo', { links: [{ name: 'ride', kind: 'follow', source: 'vane', weight: 1 }] });
    const there = stand([bone('vane'), follower], { vane: { turn } });
    expectClose(there.echo.matrix, there.vane.matrix, 2e-15);
  });
});

describe('three, Euler: every order of turning', () => {
  const ORDERS: TurnOrder[] = ['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'];
  test.each(ORDERS)('%s, 200 seeded triples of angles', (turnOrder) => {
    const random = seeded(31);
    for (let i = 0; i < 200; i++) {
      const round = () => pick(random, [-180, -90, 0, 90, 180]);
      const angles: Vec3 = [0, 1, 2].map(() => (i < 40 ? round() : between(random, -400, 400))) as unknown as Vec3;
      const [x, y, z] = angles.map((a) => (a * Math.PI) / 180);
      const expected = new Quaternion().setFromEuler(new Euler(x, y, z, turnOrder.toUpperCase() as 'XYZ'));
      expectSameTurn(turned(angles, turnOrder).turn, expected.toArray(), 1e-30, `${turnOrder} ${angles}`);
    }
  });
  test('another order is another turn', () => {
    expect(() => expectSameTurn(turned([30, 60, 45], 'zyx').turn, SCIPY_TURN, 1e-3)).toThrow(/1 − \|dot\|/);
  });
});
