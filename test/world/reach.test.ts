import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { Quaternion, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import type { Quat, Vec3 } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { between, seeded, unitVector } from '../support/random.ts';
import { bone, DEG, stand } from './stage.ts';

interface Limb {
  upper: number;
  lower: number;
  target: Vec3;
  pole: Vec3;
  /** At rest both bones lie along this. */
  along?: Vec3;
  from?: Vec3;
}

const vector = (v: readonly number[]) => new Vector3(v[0], v[1], v[2]);

/** Elbow and tip of Heron's leg, after it reached. */
function reached({ upper, lower, target, pole, along = [1, 0, 0], from = [0, 0, 0] }: Limb): {
  elbow: Vec3;
  tip: Vec3;
} {
  const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 0, 1), vector(along)).toArray() as unknown as Quat;
  const knee = vector(from).addScaledVector(vector(along), upper).toArray();
  const link = { name: 'step', kind: 'reach', target: { bone: 'stone' }, pole: { bone: 'reed' } } as const;
  const bones = [
    bone('stone', { base: target }),
    bone('reed', { base: pole }),
    bone('heron_thigh', { base: from, turn, length: upper }),
    bone('heron_shank', { parent: 'heron_thigh', base: knee, turn, length: lower, attach: 'tip', links: [link] }),
  ];
  const { heron_shank: shank } = stand(bones);
  return { elbow: shank.base, tip: shank.at([0, 0, lower]) };
}

const angleDeg = (a: Vector3, b: Vector3) => Math.atan2(a.clone().cross(b).length(), a.dot(b)) / DEG;

describe('two bones', () => {
  test('F1: 3, 4 and a distance of 5 (law of cosines, Euclid II.12–13; three solvers agree)', () => {
    const { elbow, tip } = reached({ upper: 3, lower: 4, target: [5, 0, 0], pole: [1, -4, 0] });
    expectClose(elbow, [1.8, -2.4, 0], 1e-14);
    expectClose(tip, [5, 0, 0], 1e-14);
    const [shoulder, e] = [new Vector3(), vector(elbow)];
    expectClose(angleDeg(shoulder.clone().sub(e), vector(tip).sub(e)), 90, 1e-8);
    expectClose(angleDeg(e, new Vector3(1, 0, 0)), 53.13010235, 1e-8);
  });

  /** Duarte and Watanabe, Notes on Scientific Computing for Biomechanics, KinematicChain.ipynb (inputs seen). */
  describe.each([
    ['F2', [-0.5, 0.5, 0], [90, 90], [180, -90]],
    ['F3', [0, 0.5 * Math.SQRT2, 0], [45, 90], [135, -90]],
  ] as [string, Vec3, number[], number[]][])('%s: planar chain of 0.5 and 0.5', (_, target, first, second) => {
    test.each([first, second])('joint angles %f° and %f°, by the pole on that side', (theta1, theta2) => {
      const elbow: Vec3 = [0.5 * Math.cos(theta1 * DEG), 0.5 * Math.sin(theta1 * DEG), 0];
      const got = reached({ upper: 0.5, lower: 0.5, target, pole: elbow.map((x) => 2 * x) as unknown as Vec3 });
      expectClose(got.elbow, elbow, 1e-9);
      const whole = theta1 + theta2;
      const tip = [elbow[0] + 0.5 * Math.cos(whole * DEG), elbow[1] + 0.5 * Math.sin(whole * DEG), 0];
      expectClose(got.tip, tip, 1e-9);
      expectClose(got.tip, target, 1e-9);
    });
  });

  test('F4: outside the ring from |l1 − l2| to l1 + l2 it comes as near as it can (Modern Robotics, ch. 6, seen)', () => {
    const limb = { upper: 3, lower: 1, pole: [0, 5, 0] as Vec3 };
    expectClose(reached({ ...limb, target: [9, 0, 0] }).tip, [4, 0, 0], 1e-14);
    expectClose(reached({ ...limb, target: [0, 0, 1] }).tip, [0, 0, 2], 1e-14);
    for (const distance of [2.0001, 3, 3.9999]) {
      expectClose(reached({ ...limb, target: [distance, 0, 0] }).tip, [distance, 0, 0], 1e-12);
    }
  });
});

/** The angle at the shoulder, in the plane of the chain, from several starts: the fit may stop at a saddle. */
function fittedShoulder(upper: number, lower: number, distance: number): number {
  const along = (shoulder: number, bend: number) => upper * Math.cos(shoulder) + lower * Math.cos(shoulder - bend);
  const across = (shoulder: number, bend: number) => upper * Math.sin(shoulder) + lower * Math.sin(shoulder - bend);
  const starts = [0.1, 0.6, 1.2, 1.8, 2.4].flatMap((shoulder) => [0.5, 1.5, 2.6].map((bend) => [shoulder, bend]));
  for (const initialValues of starts) {
    const { parameterValues, parameterError } = levenbergMarquardt(
      { x: [0, 1], y: [distance, 0] },
      ([shoulder, bend]) =>
        (x) =>
          x === 0 ? along(shoulder, bend) : across(shoulder, bend),
      { initialValues, damping: 1e-3, maxIterations: 300, errorTolerance: 1e-26, gradientDifference: 1e-7 },
    );
    if (parameterError < 1e-20) return parameterValues[0];
  }
  throw new Error(`no fit for ${upper}, ${lower} at ${distance}`);
}

test('ml-levenberg-marquardt 5.1: the two joint angles fitted to 300 seeded targets', () => {
  const random = seeded(71);
  let worst = 0;
  for (let i = 0; i < 300; i++) {
    const [upper, lower] = [between(random, 0.2, 2), between(random, 0.2, 2)];
    const nearest = Math.abs(upper - lower);
    const distance = between(random, nearest + 0.05, upper + lower - 0.05);
    const from = unitVector(random);
    const toward = vector(unitVector(random));
    const target = vector(from).addScaledVector(toward, distance);
    const pole = vector(unitVector(random)).multiplyScalar(3);
    const side = pole.clone().sub(vector(from));
    side.addScaledVector(toward, -side.dot(toward)).normalize();

    const shoulder = fittedShoulder(upper, lower, distance);
    // It may find either side; the pole tells which.
    const elbow = vector(from)
      .addScaledVector(toward, upper * Math.cos(shoulder))
      .addScaledVector(side, upper * Math.abs(Math.sin(shoulder)));

    const got = reached({
      upper,
      lower,
      from,
      along: unitVector(random),
      target: target.toArray(),
      pole: pole.toArray(),
    });
    expectClose(got.tip, target.toArray(), 1e-12, `tip ${i}`);
    expectClose(got.elbow, elbow.toArray(), 1e-9, `elbow ${i}`);
    worst = Math.max(worst, vector(got.elbow).distanceTo(elbow));
  }
  console.log(`ml-levenberg-marquardt: worst elbow ${worst.toExponential(2)} m off`);
  expect(worst).toBeGreaterThan(0);
});
