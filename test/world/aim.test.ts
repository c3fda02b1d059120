import type { Decimal } from 'decimal.js';
import { glMatrix, mat4 } from 'gl-matrix';
import { Matrix4, Object3D, Quaternion, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import type { AimLink, Axis, AxisName, Quat, Vec3 } from '../../src/solver/index.ts';
import { compile, readRig } from '../../src/solver/index.ts';
import { expectClose, expectSameTurn, turnDistance } from '../support/close.ts';
import { Exact, exactDecimal } from '../support/decimal.ts';
import { between, seeded, unitQuaternion, unitVector } from '../support/random.ts';
import { bone, rigDocument, stand } from './stage.ts';

glMatrix.setMatrixArrayType(Array as unknown as Float32ArrayConstructor);

/** The turn of a bone at the origin that aims an axis at a point. */
function aimed(target: Vec3, parts: Partial<AimLink> = {}): Quat {
  const links = [{ name: 'watch', kind: 'aim' as const, target: { bone: 'kite' }, ...parts }];
  return stand([bone('kite', { base: target }), bone('vane', { links })]).vane.turn;
}

const UP = { axis: '+y', toward: { direction: [0, 1, 0] } } as const;

/** VRM Consortium, VRMC_node_constraint 1.0: the smallest turn that takes the axis to the target; weight by slerp (rules seen). */
describe('shortest turn', () => {
  test('C1: +X to +Y', () => {
    expectClose(aimed([0, 1, 0], { axis: '+x' }), [0, 0, Math.SQRT1_2, Math.SQRT1_2], 1e-8);
  });

  test('C3: +Z to (0.6, 0, 0.8)', () => {
    expectClose(aimed([0.6, 0, 0.8]), [0, 0.31622777, 0, 0.9486833], 1e-7);
  });

  test('C4: to the opposite direction, any half-turn that gets there (analytic)', () => {
    const random = seeded(4);
    const named: AxisName[] = ['+x', '-x', '+y', '-y', '+z', '-z'];
    const axes: Axis[] = [...named, ...Array.from({ length: 100 }, () => unitVector(random))];
    for (const axis of axes) {
      const v = vectorOf(axis);
      const away = v.map((x) => -2 * x) as unknown as Vec3;
      const [x, y, z, w] = aimed(away, { axis });
      expectClose(w, 0, 1e-9);
      expectClose(x * v[0] + y * v[1] + z * v[2], 0, 1e-9);
      const there = new Vector3(...v).applyQuaternion(new Quaternion(x, y, z, w));
      expectClose(
        there.toArray(),
        away.map((c) => c / 2),
        1e-9,
      );
    }
  });

  test('C5: +X at (1,1,0), whole', () => {
    expectClose(aimed([1, 1, 0], { axis: '+x' }), [0, 0, 0.38268343, 0.92387953], 1e-8);
  });

  test('C6: +X at (1,1,0), half', () => {
    expectClose(aimed([1, 1, 0], { axis: '+x', weight: 0.5 }), [0, 0, 0.19509032, 0.98078528], 1e-8);
  });

  test('C9: at (1,1,1) it is not the turn with an up vector', () => {
    const shortest = aimed([1, 1, 1]);
    expectClose(shortest, [-0.32505758, 0.32505758, 0, 0.88807383], 1e-7);
    const x = new Vector3(1, 0, 0).applyQuaternion(new Quaternion(...shortest));
    expectClose(x.toArray(), [0.78867513, -0.21132487, -0.57735027], 1e-7);
    expect(() => expectSameTurn(shortest, aimed([1, 1, 1], { up: UP }), 1e-3)).toThrow(/1 − \|dot\|/);
  });

  test('C14: two that aim at each other are refused (rule of VRMC_node_constraint, Sources, seen)', () => {
    const links = (target: string) => [{ name: 'watch', kind: 'aim' as const, target: { bone: target } }];
    const rig = readRig(
      rigDocument([
        bone('vane_left', { links: links('vane_right') }),
        bone('vane_right', { base: [1, 0, 0], links: links('vane_left') }),
      ]),
    );
    if (!rig.ok) throw new Error(rig.refusal.found);
    const compiled = compile(rig.value);
    expect(compiled.ok).toBe(false);
    if (!compiled.ok)
      expect(compiled.cycle.join(' ')).toMatch(/vane_left.*vane_right.*vane_left|vane_right.*vane_left.*vane_right/);
  });
});

/** The shortest turn (v×d, 1 + v·d), made unit, in decimals of 60 digits. */
function exactShortest(v: Vec3, toward: Vec3): Quat {
  const [a, b] = [v.map(exactDecimal), toward.map(exactDecimal)];
  const length = (x: Decimal[]) => x.reduce((sum, c) => sum.plus(c.times(c)), new Exact(0)).sqrt();
  const d = b.map((c) => c.div(length(b)));
  const cross = [1, 2, 0].map((j, i) => a[j].times(d[(i + 2) % 3]).minus(a[(i + 2) % 3].times(d[j])));
  const dot = a.reduce((sum, c, i) => sum.plus(c.times(d[i])), new Exact(0));
  const q = [...cross, dot.plus(length(a))];
  return q.map((c) => c.div(length(q)).toNumber()) as unknown as Quat;
}

describe('next to the opposite direction, against decimals of 60 digits', () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])('C4: 1e-%i rad from it, at most 1e-7 rad off', (digits) => {
    const random = seeded(40 + digits);
    let worst = 0;
    for (let i = 0; i < 50; i++) {
      const [sx, sy] = [between(random, -1, 1), between(random, 0.1, 1)];
      const target: Vec3 = [sx * 10 ** -digits, sy * 10 ** -digits, -1];
      worst = Math.max(worst, turnDistance(aimed(target), exactShortest([0, 0, 1], target)));
    }
    console.log(`aim 1e-${digits} rad from opposite: worst ${Math.sqrt(8 * worst).toExponential(1)} rad`);
    expectClose(Math.sqrt(8 * worst), 0, 1e-7);
  });
});

function vectorOf(axis: Axis): Vec3 {
  if (typeof axis !== 'string') return axis;
  const size = axis.startsWith('-') ? -1 : 1;
  return ['x', 'y', 'z'].map((letter) => (axis.endsWith(letter) ? size : 0)) as unknown as Vec3;
}

describe('with an up vector', () => {
  test('C8: +Z at (1,1,1), +Y up (cross products; three lookAt and gl-matrix targetTo agree)', () => {
    const turn = aimed([1, 1, 1], { up: UP });
    expectClose(turn, [-0.27984814, 0.3647052, 0.1159169, 0.88047624], 1e-7);
    const axes = new Matrix4().makeRotationFromQuaternion(new Quaternion(...turn)).toArray();
    expectClose(axes.slice(0, 3), [Math.SQRT1_2, 0, -Math.SQRT1_2], 1e-7);
    expectClose(axes.slice(4, 7), [-0.40824829, 0.81649658, -0.40824829], 1e-7);
    expectClose(axes.slice(8, 11), [0.57735027, 0.57735027, 0.57735027], 1e-7);
  });

  test('three, Object3D.lookAt and gl-matrix, mat4.targetTo: 1,000 seeded targets and up directions', () => {
    const random = seeded(81);
    for (let i = 0; i < 1000; i++) {
      const target = unitVector(random);
      const direction = unitVector(random);
      if (Math.abs(new Vector3(...target).dot(new Vector3(...direction))) > 0.999) continue;
      const ours = aimed(target, { up: { axis: '+y', toward: { direction } } });
      const object = new Object3D();
      object.up.set(...direction);
      object.lookAt(...target);
      expectSameTurn(ours, object.quaternion.toArray(), 1e-23, `three, case ${i}`);
      // targetTo puts +z from the target to the eye.
      const gl = mat4.targetTo(mat4.create(), [0, 0, 0], target.map((c) => -c) as unknown as Vec3, direction);
      const read = new Quaternion().setFromRotationMatrix(new Matrix4().fromArray(Array.from(gl)));
      expectSameTurn(ours, read.toArray(), 1e-23, `gl-matrix, case ${i}`);
    }
  });

  test('any axis and up axis: the aim points there and the up axis leans on the up direction (by its meaning)', () => {
    const random = seeded(82);
    for (let i = 0; i < 500; i++) {
      const axis = unitVector(random);
      const upAxis = unitVector(random);
      const [target, direction] = [unitVector(random), unitVector(random)];
      const slanted = (a: Vec3, b: Vec3) => new Vector3(...a).cross(new Vector3(...b)).length();
      if (slanted(axis, upAxis) < 0.05 || slanted(target, direction) < 0.05) continue;
      const rest = unitQuaternion(random);
      const link = {
        name: 'watch',
        kind: 'aim',
        target: { bone: 'kite' },
        axis,
        up: { axis: upAxis, toward: { direction } },
      } as const;
      const reach = between(random, 0.1, 5);
      const kite = bone('kite', { base: target.map((c) => c * reach) as unknown as Vec3 });
      const turn = new Quaternion(...stand([kite, bone('vane', { turn: rest, links: [link] })]).vane.turn);
      const d = new Vector3(...target);
      expectClose(new Vector3(...axis).applyQuaternion(turn).toArray(), target, 1e-14);
      const across = (v: Vector3) => v.clone().addScaledVector(d, -v.dot(d)).normalize().toArray();
      const leaning = across(new Vector3(...upAxis).applyQuaternion(turn));
      expectClose(leaning, across(new Vector3(...direction)), 1e-12);
    }
  });
});
