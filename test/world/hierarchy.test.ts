import { Quaternion } from 'three';
import { describe, expect, test } from 'vitest';
import type { Quat, Vec3 } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { about, bone, columns, stand } from './stage.ts';

describe('Khronos glTF', () => {
  const posed = { crane: { turn: about([1, 0, 0], 30), size: [2, 1, 0.5] as const } };
  const { crane } = stand([bone('crane', { base: [10, 20, 30] })], posed);

  test('D1: T(10,20,30) · Rx(30°) · S(2,1,0.5) (glTF tutorial 004, printed to three decimals, seen)', () => {
    expectClose(crane.matrix, [2, 0, 0, 0, 0, 0.866, 0.5, 0, 0, -0.25, 0.433, 0, 10, 20, 30, 1], 5e-4);
    expectClose(crane.matrix, [2, 0, 0, 0, 0, 0.866025, 0.5, 0, 0, -0.25, 0.433013, 0, 10, 20, 30, 1], 1e-6);
  });

  test('D2: no other order of T, R, S and no row-major list comes near D1 (rule of glTF 2.0, Transformations, seen)', () => {
    const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const others = {
      T·S·R: columns([2, 0, 0, 10], [0, cos, -sin, 20], [0, 0.5 * sin, 0.5 * cos, 30]),
      S·R·T: columns(
        [2, 0, 0, 20],
        [0, cos, -sin, cos * 20 - sin * 30],
        [0, sin / 2, cos / 2, (sin * 20 + cos * 30) / 2],
      ),
      'row-major': [2, 0, 0, 10, 0, cos, -0.5 * sin, 20, 0, sin, 0.5 * cos, 30, 0, 0, 0, 1],
    };
    for (const [name, matrix] of Object.entries(others)) {
      expect(() => expectClose(crane.matrix, matrix, 0.2), name).toThrow(/off by/);
    }
  });

  test('D3: the matrix of “node-camera” as base and turn (glTF 2.0, Transformations, matrix seen; turn by three and gl-matrix)', () => {
    const turn = new Quaternion(-0.001305, 0.9816, 0.19062, -0.011114).normalize().toArray() as unknown as Quat;
    const base: Vec3 = [-0.0115543, 0.194711, -0.478297];
    const rows = columns(
      [-0.99975, 0.00167596, -0.0223165, base[0]],
      [-0.00679829, 0.927325, 0.374196, base[1]],
      [0.0213218, 0.374254, -0.927081, base[2]],
    );
    const echo = bone('echo', { links: [{ name: 'ride', kind: 'follow', source: 'lamp' }] });
    const there = stand([bone('lamp', { base, turn }), echo]);
    expectClose(there.lamp.matrix, rows, 2e-6);
    // Once more, after a link took it apart and put it together.
    expectClose(there.echo.matrix, rows, 2e-6);
  });

  test('D4: through T(0,1,0) and a size of 0.5, the point (2,0,0) is at (1,1,0) (glTF 2.0, Joint hierarchy, seen)', () => {
    const bones = [
      bone('boom', { base: [0, 1, 0] }),
      bone('jib', { parent: 'boom', base: [0, 1, 0] }),
      bone('hook', { parent: 'jib', base: [0, 1, 0] }),
    ];
    expectClose(stand(bones, { jib: { size: [0.5, 0.5, 0.5] } }).hook.at([2, 0, 0]), [1, 1, 0], 0);
  });

  test('D5: the identity is [0, 0, 0, 1], w last (glTF 2.0, seen)', () => {
    expectClose(stand([bone('post', { turn: [0, 0, 0, 1] })]).post.matrix, columns([1, 0, 0], [0, 1, 0], [0, 0, 1]), 0);
    const last = stand([bone('post', { turn: [1, 0, 0, 0] })]).post.matrix;
    expectClose(last, columns([1, 0, 0], [0, -1, 0], [0, 0, -1]), 0);
  });

  test('D6: right-handed, +Y up, +Z forward, so turning left about +Y faces +X (glTF 2.0, seen)', () => {
    const { otter } = stand([bone('otter')], { otter: { turn: about([0, 1, 0], 90) } });
    expectClose(otter.at([0, 0, 1]), [1, 0, 0], 1e-15);
    expectClose(otter.at([1, 0, 0]), [0, 0, -1], 1e-15);
  });

  test('D7: half-way from (14,3,−2) to (18,1,1) is (16,2,−0.5) (glTF tutorial 007, at 1.2 s of 0.8 to 1.6, seen)', () => {
    const half = { name: 'ride', kind: 'follow', source: 'kite', channels: ['move'], weight: 0.5 } as const;
    const bones = [bone('kite', { base: [18, 1, 1] }), bone('streamer', { base: [14, 3, -2], links: [half] })];
    expectClose(stand(bones).streamer.base, [16, 2, -0.5], 1e-12);
  });
});

/** Chains of joints, each a bone whose pose is the joint's motion; the matrices are published results. */
describe('forward kinematics', () => {
  test('F6: product of exponentials, FKinSpace example (Lynch and Park, Modern Robotics, ch. 4, seen)', () => {
    // The screw axes as lines: about z through (0,4,0); along y; about −z through (0,6,0) with pitch 0.1.
    const bones = [
      bone('turntable', { base: [0, 4, 0] }),
      bone('slide', { parent: 'turntable', base: [0, 4, 0] }),
      bone('screw', { parent: 'slide', base: [0, 6, 0] }),
      bone('hook', { parent: 'screw', base: [0, 6, 2], turn: [0, 1, 0, 0] }),
    ];
    const { hook } = stand(bones, {
      turntable: { turn: about([0, 0, 1], 90) },
      slide: { move: [0, 3, 0] },
      screw: { turn: about([0, 0, -1], 180), move: [0, 0, -0.1 * Math.PI] },
    });
    expectClose(hook.matrix, columns([0, 1, 0, -5], [1, 0, 0, 4], [0, 0, -1, 1.68584073]), 1e-8);
  });

  test('F7: screw by 90° about the line along x through (0,−1.5,1.5) (Modern Robotics, ch. 3, MatrixExp6, seen)', () => {
    const bones = [bone('pivot', { base: [0, -1.5, 1.5] }), bone('hook', { parent: 'pivot' })];
    const { hook } = stand(bones, { pivot: { turn: about([1, 0, 0], 90) } });
    expectClose(hook.matrix, columns([1, 0, 0, 0], [0, 0, -1, 0], [0, 1, 0, 3]), 1e-7);
  });

  test('F8: the six joints of Modern Robotics example 4.5 (sizes seen, result from memory)', () => {
    const [W1, W2, L1, L2, H1, H2] = [0.109, 0.082, 0.425, 0.392, 0.089, 0.095];
    const bones = [
      bone('waist'),
      bone('shoulder', { parent: 'waist', base: [0, 0, H1] }),
      bone('elbow', { parent: 'shoulder', base: [L1, 0, H1] }),
      bone('wrist_1', { parent: 'elbow', base: [L1 + L2, 0, H1] }),
      bone('wrist_2', { parent: 'wrist_1', base: [L1 + L2, W1, H1] }),
      bone('wrist_3', { parent: 'wrist_2', base: [L1 + L2, W1, H1 - H2] }),
      // Its rest turn is the rows (−1 0 0), (0 0 1), (0 1 0).
      bone('hook', { parent: 'wrist_3', base: [L1 + L2, W1 + W2, H1 - H2], turn: [0, Math.SQRT1_2, Math.SQRT1_2, 0] }),
    ];
    const { hook } = stand(bones, {
      shoulder: { turn: about([0, 1, 0], -90) },
      wrist_2: { turn: about([0, 0, -1], 90) },
    });
    expectClose(hook.matrix, columns([0, -1, 0, 0.095], [1, 0, 0, 0.109], [0, 0, 1, 0.988]), 1e-9);
  });

  test('F9: P, R, P, R at 1, 2, 3, 4 (Robotics Toolbox for Python, test_fkine, seen)', () => {
    const RAD = 180 / Math.PI;
    const names = ['slide_1', 'turn_2', 'slide_3', 'turn_4'];
    const bones = names.map((name, i) => bone(name, i === 0 ? {} : { parent: names[i - 1] }));
    const { turn_4 } = stand(bones, {
      slide_1: { move: [0, 0, 1] },
      turn_2: { turn: about([0, 0, 1], 2 * RAD) },
      slide_3: { move: [0, 0, 3], turn: about([0, 0, 1], 2 * RAD) },
      turn_4: { turn: about([0, 0, 1], 4 * RAD) },
    });
    const [cos, sin] = [-0.14550003, 0.98935825];
    expectClose(turn_4.matrix, columns([cos, -sin, 0, 0], [sin, cos, 0, 0], [0, 0, 1, 4]), 1e-8);
  });

  test('F11: six joints by standard Denavit–Hartenberg rows (Corke, Robotics, Vision & Control; value from memory, rows seen)', () => {
    // d, a (m), α and joint angle (°) of each row: Rz(angle)·Tz(d)·Tx(a)·Rx(α).
    const rows = [
      [0, 0, 90, 0],
      [0, 0.4318, 0, 45],
      [0.15005, 0.0203, -90, 180],
      [0.4318, 0, 90, 0],
      [0, 0, -90, 45],
      [0, 0, 0, 0],
    ];
    const bones = rows.flatMap((_, i) => [
      bone(`joint_${i}`, i === 0 ? {} : { parent: `across_${i - 1}` }),
      bone(`across_${i}`, { parent: `joint_${i}` }),
    ]);
    const pose = Object.fromEntries(
      rows.flatMap(([d, a, alpha, angle], i) => [
        [`joint_${i}`, { turn: about([0, 0, 1], angle) }],
        [`across_${i}`, { move: [a, 0, d] as const, turn: about([1, 0, 0], alpha) }],
      ]),
    );
    const { across_5 } = stand(bones, pose);
    expectClose(across_5.matrix, columns([0, 0, 1, 0.5963], [0, 1, 0, -0.15005], [-1, 0, 0, -0.01435]), 1e-4);
  });

  test('F12: the right arm at rest (MuJoCo, model/humanoid/humanoid.xml, body positions, seen)', () => {
    // Its up axis is z; the numbers are used as they stand.
    const bones = [
      bone('torso', { base: [0, 0, 1.282] }),
      bone('upper_arm', { parent: 'torso', base: [0, -0.17, 1.342] }),
      bone('lower_arm', { parent: 'upper_arm', base: [0.18, -0.35, 1.162] }),
      bone('hand', { parent: 'lower_arm', base: [0.36, -0.17, 1.342] }),
    ];
    const { upper_arm, lower_arm, hand } = stand(bones);
    expectClose(hand.base, [0.36, -0.17, 1.342], 1e-9);
    const gap = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((x, i) => x - b[i]));
    expectClose(gap(upper_arm.base, lower_arm.base), 0.31176915, 1e-8);
    expectClose(gap(lower_arm.base, hand.base), 0.31176915, 1e-8);
  });
});
