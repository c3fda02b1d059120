import { describe, expect, test } from 'vitest';
import { bindMesh, skinMesh } from '../../../src/solver/index.ts';
import { writeSkinMatrix } from '../../../src/solver/mesh/skinMatrix.ts';
import { expectClose } from '../../support/close.ts';
import { seeded } from '../../support/random.ts';
import { randomTurn, randomVector } from '../../support/randomVectors.ts';
import { simpleSkin } from './simpleSkin.ts';
import { aboutZ, packed, rigOf, skinBone, worldOf } from './worlds.ts';

const NONE = aboutZ(0);

/** The strip with its second joint turned about z. */
function bent(degrees: number): (vertex: number) => ArrayLike<number> {
  const binding = simpleSkin();
  const out = new Float64Array(binding.positions.length);
  skinMesh(binding, packed(worldOf([0, 0, 0], NONE), worldOf([0, 1, 0], aboutZ(degrees))), out);
  return (vertex) => out.subarray(3 * vertex, 3 * vertex + 3);
}

/** Khronos glTF tutorials 019 and 020, asset SimpleSkin; numbers agree with two other libraries to 4.4e-16. */
describe('linear blend skinning of the strip', () => {
  test.each([
    [2, [-0.375, 0.448223, 0]],
    [4, [-0.426777, 0.823223, 0]],
    [5, [0.426777, 1.176777, 0]],
    [6, [-0.65533, 1.125, 0]],
    [8, [-1.06066, 1.353553, 0]],
    [9, [-0.353553, 2.06066, 0]],
  ])('vertex %i with the joint at 45°', (vertex, expected) => {
    expectClose(bent(45)(vertex), expected, 1e-6);
  });

  test.each([
    [2, [-0.25, 0.5, 0]],
    [4, [-0.25, 0.75, 0]],
    [5, [0.25, 1.25, 0]],
    [6, [-0.5, 0.75, 0]],
    [8, [-1, 0.5, 0]],
    [9, [-1, 1.5, 0]],
  ])('vertex %i with the joint at 90°', (vertex, expected) => {
    expectClose(bent(90)(vertex), expected, 1e-12);
  });

  test('closes the seam to a point at 180°', () => {
    const at = bent(180);
    expectClose(at(4), [0, 1, 0], 1e-12);
    expectClose(at(5), [0, 1, 0], 1e-12);
  });

  test('has complementary weights down the strip', () => {
    const { weights } = simpleSkin();
    const pair = (vertex: number) => weights.slice(4 * vertex, 4 * vertex + 2);
    expectClose(pair(2), [0.75, 0.25], 0);
    expectClose(pair(4), [0.5, 0.5], 0);
    expectClose(pair(6), [0.25, 0.75], 0);
    expectClose(pair(8), [0, 1], 0);
  });
});

describe('the skin matrix', () => {
  test('is the identity at rest, however the bone lies (glTF 2.0: joint matrix = global · inverse bind)', () => {
    const random = seeded(11);
    for (let i = 0; i < 200; i++) {
      const base = randomVector(random, 2);
      const turn = randomTurn(random);
      const binding = bindMesh(rigOf([skinBone('boom', base, turn)], { positions: [], triangles: [] }))!;
      writeSkinMatrix(binding, packed(worldOf(base, turn)), 0);
      expectClose(binding.room.affine, [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0], 1e-14);
    }
  });

  test('carries sizes: a bone at twice the size about its base takes the mesh along', () => {
    const mesh = { positions: [1, 2, 3], triangles: [] };
    const binding = bindMesh(rigOf([skinBone('boom', [1, 0, 0])], mesh))!;
    const out = new Float64Array(3);
    skinMesh(binding, packed(worldOf([1, 0, 0], NONE, [2, 2, 2])), out);
    expectClose(out, [1, 4, 6], 1e-14);
  });
});

test('a mesh without a skin bone stays at rest', () => {
  const bone = { ...skinBone('wind', [0, 0, 0]), role: 'control' as const };
  const binding = bindMesh(rigOf([bone], { positions: [1, 2, 3], triangles: [], skinning: 'dual' }))!;
  const out = new Float64Array(3);
  skinMesh(binding, packed(worldOf([5, 5, 5], aboutZ(30))), out);
  expect([...out]).toEqual([1, 2, 3]);
});
