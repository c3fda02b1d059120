import { describe, expect, test } from 'vitest';
import type { Quat, Vec3 } from '../../../src/solver/index.ts';
import { bindMesh, skinMesh, withWeights } from '../../../src/solver/index.ts';
import type { Binding } from '../../../src/solver/mesh/binding.ts';
import { blendDual } from '../../../src/solver/mesh/dual.ts';
import { applyDual, writeDual } from '../../../src/solver/mesh/dualQuaternion.ts';
import { expectClose } from '../../support/close.ts';
import { seeded } from '../../support/random.ts';
import { randomTurn, randomVector } from '../../support/randomVectors.ts';
import { aboutZ, packed, rigOf, skinBone, worldOf } from './worlds.ts';

/** A vertex at radius 1 about the twist axis z, pulled half and half by two bones. */
function ring(skinning: 'linear' | 'dual', w = 0.5): Binding {
  const bones = [skinBone('still', [0, 0, 0]), skinBone('turned', [0, 0, 0])];
  const binding = bindMesh(rigOf(bones, { positions: [1, 0, 0], triangles: [], skinning }))!;
  const weights = Float64Array.of(1 - w, w, 0, 0);
  return withWeights(binding, { indices: binding.indices, weights });
}

function twisted(skinning: 'linear' | 'dual', degrees: number, w = 0.5) {
  const out = new Float64Array(3);
  skinMesh(ring(skinning, w), packed(worldOf([0, 0, 0], aboutZ(0)), worldOf([0, 0, 0], aboutZ(degrees))), out);
  const [x, y] = out;
  return { radius: Math.hypot(x!, y!), angle: (Math.atan2(y!, x!) * 180) / Math.PI };
}

/**
 * Analytic: linear radius √(1 − 2w(1−w)(1−cos θ)), dual quaternion radius 1 and angle 2·atan2(w·sin θ/2, 1−w+w·cos θ/2);
 * the collapse is the one that Kavan, Collins, Žára and O'Sullivan (I3D 2007) set out from.
 */
describe('a ring twisted half and half', () => {
  test.each([
    [180, 0, 90, 1e-12],
    [90, Math.SQRT1_2, 45, 1e-8],
    [135, 0.38268343, 67.5, 1e-8],
  ])('by %i°: linear radius %f, dual quaternions keep it and turn by %f°', (degrees, radius, angle, tolerance) => {
    expectClose(twisted('linear', degrees).radius, radius, tolerance);
    expectClose(twisted('dual', degrees).radius, 1, tolerance);
    // At 180° both ways round are equally short; either is right.
    expectClose(Math.abs(twisted('dual', degrees).angle), angle, 1e-7);
  });

  test('at other weights and angles, by the formulas', () => {
    for (const degrees of [-170, -45, 10, 60, 179]) {
      for (const w of [0.1, 0.3, 0.8]) {
        const thetaRad = (degrees * Math.PI) / 180;
        const linear = Math.sqrt(1 - 2 * w * (1 - w) * (1 - Math.cos(thetaRad)));
        const angleRad = 2 * Math.atan2(w * Math.sin(thetaRad / 2), 1 - w + w * Math.cos(thetaRad / 2));
        expectClose(twisted('linear', degrees, w).radius, linear, 1e-12);
        expectClose(twisted('dual', degrees, w).radius, 1, 1e-12);
        expectClose(twisted('dual', degrees, w).angle, (angleRad * 180) / Math.PI, 1e-9);
      }
    }
  });
});

describe('a unit dual quaternion', () => {
  test('of 90° about z and a move of (1, 2, 3) (Kavan and others 2007)', () => {
    const dual = new Float64Array(8);
    writeDual(Float64Array.from(aboutZ(90)), 0, Float64Array.of(1, 2, 3), 0, dual, 0);
    expectClose(dual.subarray(0, 4), [0, 0, Math.SQRT1_2, Math.SQRT1_2], 1e-8);
    expectClose(dual.subarray(4), [1.06066017, 0.35355339, 1.06066017, -1.06066017], 1e-8);
    const origin = new Float64Array(3);
    applyDual(dual, 0, 0, 0, 0, origin, 0);
    expectClose(origin, [1, 2, 3], 1e-8);
  });

  test('moves points as its turn and move do', () => {
    const random = seeded(5);
    for (let i = 0; i < 200; i++) {
      const [turn, move, point] = [randomTurn(random), randomVector(random, 3), randomVector(random, 3)];
      const dual = new Float64Array(8);
      writeDual(Float64Array.from(turn), 0, Float64Array.from(move), 0, dual, 0);
      const out = new Float64Array(3);
      applyDual(dual, 0, ...point, out, 0);
      expectClose(out, carried(move, turn, [1, 1, 1], point), 1e-14);
    }
  });
});

function carried(base: Vec3, turn: Quat, size: Vec3, [x, y, z]: Vec3): number[] {
  const m = worldOf(base, turn, size);
  return [0, 1, 2].map((i) => m[i]! * x + m[i + 3]! * y + m[i + 6]! * z + m[i + 9]!);
}

describe('dual quaternion skinning', () => {
  /** Two bones lying anyhow, six vertices, weights from binding. */
  function trial(seed: number, sized: boolean) {
    const random = seeded(seed);
    const bones = ['rib', 'boom', 'hook'].map((name) => skinBone(name, randomVector(random, 1), randomTurn(random)));
    const positions = Array.from({ length: 6 }, () => randomVector(random, 1)).flat();
    const size = (): Vec3 => (sized ? [0.5 + random(), 0.5 + random(), 0.5 + random()] : [1, 1, 1]);
    const world = packed(...bones.map(() => worldOf(randomVector(random, 1), randomTurn(random), size())));
    return {
      bones,
      positions,
      world,
      binding: bindMesh(rigOf(bones, { positions, triangles: [], skinning: 'dual' }))!,
    };
  }

  test("does not change when the sign of one bone's dual quaternion does (antipodality, Kavan and others 2007)", () => {
    for (let seed = 0; seed < 100; seed++) {
      const { binding, world } = trial(seed, false);
      const plain = new Float64Array(18);
      skinMesh(binding, world, plain);
      for (let bone = 0; bone < 3; bone++) {
        const { dual } = binding.room;
        for (let j = 8 * bone; j < 8 * bone + 8; j++) dual[j] = -dual[j]!;
        const flipped = new Float64Array(18);
        blendDual(binding, flipped);
        expectClose(flipped, plain, 1e-12, `seed ${seed}, bone ${bone}`);
      }
    }
  });

  test('of one bone is what the bone does, sizes and all', () => {
    for (let seed = 0; seed < 100; seed++) {
      const { bones, positions, world } = trial(seed, true);
      const dual = bindMesh(rigOf(bones.slice(0, 1), { positions, triangles: [], skinning: 'dual' }))!;
      const linear = bindMesh(rigOf(bones.slice(0, 1), { positions, triangles: [] }))!;
      const [a, b] = [new Float64Array(18), new Float64Array(18)];
      skinMesh(dual, world, a);
      skinMesh(linear, world, b);
      expectClose(a, b, 1e-13);
    }
  });

  test('gives nothing that is not finite where a bone is flat', () => {
    const { binding } = trial(1, false);
    const flat = packed(...[0, 1, 2].map((i) => worldOf([i, 0, 0], aboutZ(20), [1, 0, i])));
    const out = new Float64Array(18);
    skinMesh(binding, flat, out);
    expect(out.every(Number.isFinite)).toBe(true);
  });

  test('keeps the mesh at rest when the bones are', () => {
    const { bones, binding, positions } = trial(3, false);
    const out = new Float64Array(18);
    skinMesh(binding, packed(...bones.map(({ rest }) => worldOf(rest.base, rest.turn))), out);
    expectClose(out, positions, 1e-14);
  });
});
