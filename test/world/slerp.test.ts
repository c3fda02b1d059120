import type { Decimal } from 'decimal.js';
import { glMatrix, quat } from 'gl-matrix';
import { Euler, Quaternion } from 'three';
import { describe, expect, test } from 'vitest';
import type { Quat, Vec3 } from '../../src/solver/index.ts';
import { expectClose, expectSameTurn, turnDistance } from '../support/close.ts';
import { Exact, exactDecimal } from '../support/decimal.ts';
import { pick, seeded, unitQuaternion } from '../support/random.ts';
import { about, axisAngle, bone, DEG, stand } from './stage.ts';

/** Part-way turns: a bone at rest in one turn follows another bone's turn at part weight. */

glMatrix.setMatrixArrayType(Array as unknown as Float32ArrayConstructor);

function partWay(from: Quat, to: Quat, weight: number): Quat {
  const ride = { name: 'ride', kind: 'follow', source: 'wind', channels: ['turn'], weight } as const;
  return stand([bone('wind', { turn: to }), bone('vane', { turn: from, links: [ride] })]).vane.turn;
}

/** Web-platform-tests, css-transforms/animation/rotate-interpolation.html (seen), to the digits printed there. */
describe('rotate-interpolation', () => {
  const atZ = about([0, 0, 1], 45);
  const tilted = about([-1, 1, 0], 60);
  test('B1: z 45° to (−1,1,0) 60°, an eighth of the way', () => {
    const { axis, angleDeg } = axisAngle(partWay(atZ, tilted, 0.125));
    expectClose(axis, [-0.136456, 0.136456, 0.981203], 1e-6);
    expectClose(angleDeg, 40.6037, 1e-4);
  });

  test('B3: half-way (by the rule of glTF 2.0, Appendix C; five libraries agree)', () => {
    const { axis, angleDeg } = axisAngle(partWay(atZ, tilted, 0.5));
    expectClose(axis, [-0.561517, 0.561517, 0.607781], 1e-6);
    expectClose(angleDeg, 38.76098, 1e-5);
  });

  const CASES: [number, Vec3, number][] = [
    [0.25, [0.54, 0.8, 0.26], 94.83],
    [0.75, [0.17, 0.78, 0.61], 118.68],
  ];
  test.each(CASES)('B4: (1,1,0) 90° to (0,1,1) 135° at %f', (weight, axis, angleDeg) => {
    const got = axisAngle(partWay(about([1, 1, 0], 90), about([0, 1, 1], 135), weight));
    expectClose(got.axis, axis, 5e-3);
    expectClose(got.angleDeg, angleDeg, 5e-3);
  });
});

test('B6: half-way between two Euler keys (SciPy Slerp docstring, seen)', () => {
  // SciPy's lower-case 'xyz' is extrinsic: turning about z comes last, so the order in the moving frame is z, y, x.
  const bones = [
    bone('wind', { turnOrder: 'zyx' }),
    bone('vane', {
      turnOrder: 'zyx',
      links: [{ name: 'ride', kind: 'follow', source: 'wind', channels: ['turn'], weight: 0.5 }],
    }),
  ];
  const { vane } = stand(bones, {
    vane: { turn: { angles: [14.31443779, -27.50095894, -3.7275787] } },
    wind: { turn: { angles: [-1.79924227, -24.69421529, 164.57701743] } },
  });
  const { x, y, z } = new Euler().setFromQuaternion(new Quaternion(...vane.turn), 'ZYX');
  expectClose(
    [x, y, z].map((a) => a / DEG),
    [4.74588574, -32.44683966, 81.25139984],
    1e-5,
  );
});

test('B9: from z 10° to −(z 20°) by the short way (glTF 2.0, Appendix C, rule seen)', () => {
  const [x, y, z, w] = about([0, 0, 1], 20);
  expectSameTurn(partWay(about([0, 0, 1], 10), [-x, -y, -z, -w], 0.5), [0, 0, 0.13052619, 0.99144486], 1e-16);
});

test('B10: a quarter of 120° is 30°, not the 27.796° of a normalised straight blend (computed)', () => {
  const { angleDeg } = axisAngle(partWay([0, 0, 0, 1], about([0, 0, 1], 120), 0.25));
  expectClose(angleDeg, 30, 1e-12);
  expect(() => expectClose(angleDeg, 27.7957725, 1)).toThrow(/off by/);
});

/** v = sin(a(1 − t))/sin a · v0 + s·sin(at)/sin a · v1 with a = arccos|v0·v1|, s the sign of v0·v1. */
function exactSlerp(from: Quat, to: Quat, t: number): Quat {
  const unit = (q: Quat): Decimal[] => {
    const exact = q.map(exactDecimal);
    const length = exact.reduce((sum, v) => sum.plus(v.times(v)), new Exact(0)).sqrt();
    return exact.map((v) => v.div(length));
  };
  const [u, v] = [unit(from), unit(to)];
  const dot = u.reduce((sum, x, i) => sum.plus(x.times(v[i])), new Exact(0));
  const a = dot.abs().acos();
  const share = (angle: Decimal) => angle.sin().div(a.sin());
  const [p, q] = [share(a.times(new Exact(1).minus(exactDecimal(t)))), share(a.times(exactDecimal(t))).times(dot.s)];
  return u.map((x, i) => x.times(p).plus(v[i].times(q)).toNumber()) as unknown as Quat;
}

describe('1,000 seeded pairs', () => {
  const random = seeded(77);
  const pairs = Array.from({ length: 1000 }, (_, i) => {
    const from = unitQuaternion(random);
    // Every fourth pair is close together.
    const step = new Quaternion(...about(unitQuaternion(random).slice(1) as unknown as Vec3, 10 ** -(i % 7)));
    const to = i % 4 === 0 ? new Quaternion(...from).multiply(step).toArray() : unitQuaternion(random);
    return { from, to: to as unknown as Quat, weight: pick(random, [0.001, 0.25, random(), 0.999]) };
  });
  const worstAgainst = (theirs: (from: Quat, to: Quat, weight: number) => Quat, some = pairs) =>
    Math.max(...some.map(({ from, to, weight }) => turnDistance(partWay(from, to, weight), theirs(from, to, weight))));

  test('the formula of glTF 2.0, Appendix C (seen), in decimals of 60 digits', { timeout: 60_000 }, () => {
    const worst = worstAgainst(exactSlerp, pairs.slice(0, 200));
    console.log(`glTF formula: worst of 200 1 − |dot| ${worst.toExponential(2)}`);
    expectClose(worst, 0, 1e-30);
  });

  test('gl-matrix 3.4, quat.slerp', () => {
    const worst = worstAgainst(
      (from, to, t) => Array.from(quat.slerp(quat.create(), [...from], [...to], t)) as unknown as Quat,
    );
    console.log(`gl-matrix: worst 1 − |dot| ${worst.toExponential(2)}`);
    // It blends straight where 1 − |dot| is under 1e-6.
    expectClose(worst, 0, 1e-21);
  });

  test('three 0.187, Quaternion.slerp', () => {
    const worst = worstAgainst(
      (from, to, t) => new Quaternion(...from).slerp(new Quaternion(...to), t).toArray() as unknown as Quat,
    );
    console.log(`three: worst 1 − |dot| ${worst.toExponential(2)}`);
    // It blends straight over the last degrees.
    expectClose(worst, 0, 1e-15);
  });
});
