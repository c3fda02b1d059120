import { Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import type { Bone, Quat, Rig, Vec3 } from '../../src/solver/index.ts';
import { reflect, reflectPose } from '../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../support/close.ts';
import { between, seeded, unitQuaternion } from '../support/random.ts';
import { bone, rigDocument, solved, stand } from './stage.ts';

const rigOf = (bones: Bone[]) => rigDocument(bones) as Rig;

/** A. S. Householder's reflection (1958, from memory) in the plane x = 0, by three's Vector3.reflect. */
const mirrored = (v: readonly number[]): number[] =>
  vectorOf(v)
    .reflect(new Vector3(1, 0, 0))
    .toArray();
const vectorOf = (v: readonly number[]) => new Vector3(v[0], v[1], v[2]);

test('G1: the reflection in the plane across (1,1,1) takes (1,2,3) to (−3,−2,−1): the yardstick used below', () => {
  const n = new Vector3(1, 1, 1).normalize();
  expectClose(new Vector3(1, 2, 3).reflect(n).toArray(), [-3, -2, -1], 1e-12);
  expectClose(mirrored([1, 2, 3]), [-1, 2, 3], 0);
});

test('G2: a mirrored turn is (x, −y, −z, w) (analytic, S·R·S; three agrees)', () => {
  const turn: Quat = unit([0.39190384, 0.36042341, 0.43967974, 0.72331741]);
  const rig = reflect(rigOf([bone('wing_left', { turn })]));
  expectSameTurn(solved(rig).wing_right.turn, unit([0.39190384, -0.36042341, -0.43967974, 0.72331741]), 1e-16);
});

function unit(q: Quat): Quat {
  const length = Math.hypot(...q);
  return q.map((x) => x / length) as unknown as Quat;
}

test('points of a reflected rig in a reflected pose are the reflected points, 300 seeded chains', () => {
  const random = seeded(91);
  const v = (size: number): Vec3 => [
    between(random, -size, size),
    between(random, -size, size),
    between(random, -size, size),
  ];
  for (let i = 0; i < 300; i++) {
    const names = ['hip_left', 'knee_left', 'toe_left'];
    const bones = names.map((name, k) =>
      bone(name, { base: v(1), turn: unitQuaternion(random), ...(k > 0 && { parent: names[k - 1] }) }),
    );
    const posed = names.map((name) => [name, { move: v(0.5), turn: unitQuaternion(random), size: v(1.5) }]);
    const pose = { bones: Object.fromEntries(posed) };
    const here = solved(rigOf(bones), pose).toe_left;
    const there = solved(reflect(rigOf(bones)), reflectPose(pose)).toe_right;
    const [x, y, z] = v(2);
    // A mirrored frame has its x axis turned round once more.
    expectClose(there.at([-x, y, z]), mirrored(here.at([x, y, z])), 1e-13, `chain ${i}`);
  }
});

test('G4: eyes that are only nearly alike do not mirror onto each other (H-Anim figure “Joe”, ISO/IEC 19774, seen)', () => {
  const eyes = rigOf([
    bone('eye_left', { base: [0.0336, 1.6332, 0.0502] }),
    bone('eye_right', { base: [-0.0236, 1.6331, 0.051] }),
  ]);
  const there = solved(reflect(eyes));
  expectClose(there.eye_left.base, [0.0236, 1.6331, 0.051], 0);
  expect(() => expectClose(there.eye_left.base, [0.0336, 1.6332, 0.0502], 9e-3)).toThrow(/off by/);
});

test('D18: a mirrored mesh keeps its outside out (glTF 2.0: a negative determinant turns the winding round, seen)', () => {
  const positions = [0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1];
  const triangles = [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3];
  const volume = (p: readonly number[], t: readonly number[]) => {
    const corner = (i: number) => new Vector3(p[3 * i], p[3 * i + 1], p[3 * i + 2]);
    let sum = 0;
    for (let i = 0; i < t.length; i += 3) sum += corner(t[i]).dot(corner(t[i + 1]).cross(corner(t[i + 2]))) / 6;
    return sum;
  };
  const { mesh } = reflect({ ...rigOf([bone('bellows')]), mesh: { positions, triangles } });
  expectClose(volume(positions, triangles), 1 / 6, 1e-15);
  expectClose(volume(mesh!.positions, mesh!.triangles), 1 / 6, 1e-15);
  expectClose(volume(mesh!.positions, triangles), -1 / 6, 1e-15);
});

/** Incompressible uniaxial extension: lateral stretch 1/√λ (neo-Hookean solid, encyclopaedia article, rule seen). */
describe('volume-keeping stretch', () => {
  const stretched = (lambda: number, sides: 'volume' | 'free') => {
    const link = { name: 'pull', kind: 'span', target: { bone: 'hook' }, sides } as const;
    return stand([bone('hook', { base: [0, 0, lambda] }), bone('bellows', { links: [link] })]).bellows;
  };

  test.each([
    [2, Math.SQRT1_2],
    [4, 0.5],
    [0.5, Math.SQRT2],
    [1.21, 0.90909091],
  ])('G6: λ = %f gives %f across', (lambda, lateral) => {
    const { size } = stretched(lambda, 'volume');
    expectClose(size, [lateral, lateral, lambda], 5e-9);
    expectClose(size[0] * size[1] * size[2], 1, 1e-12);
  });

  test('G6: with free sides only the length changes', () => {
    expectClose(stretched(4, 'free').size, [1, 1, 4], 1e-12);
  });

  test('G7: for a small strain, across by −½ of along (Poisson’s ratio ½, seen; −0.49963 at λ = 1.001, computed)', () => {
    expectClose((stretched(1.001, 'volume').size[0] - 1) / 0.001, -0.49963, 1e-5);
  });
});
