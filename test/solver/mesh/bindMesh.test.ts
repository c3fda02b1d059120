import { describe, expect, test } from 'vitest';
import { bindMesh } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { seeded } from '../../support/random.ts';
import { randomRig } from '../../support/rigs.ts';
import { aboutZ, rigOf, skinBone } from './worlds.ts';

const HALF = Math.SQRT1_2;

/** The pulls of one vertex at `position`. */
function pulls(bones: Parameters<typeof rigOf>[0], position: readonly number[]) {
  const { indices, weights } = bindMesh(rigOf(bones, { positions: position, triangles: [] }))!;
  return { indices: [...indices], weights: [...weights] };
}

/** The rule is the rig format's own: weight ∝ 1/(d² + 1e-6)², d to the segment from base to tip. */
describe('binding', () => {
  test('weighs by the fourth power of the distance', () => {
    const { weights } = pulls([skinBone('near', [0, 0, 0]), skinBone('far', [3, 0, 0])], [1, 0, 0.5]);
    const [near, far] = [1 / (1 + 1e-6) ** 2, 1 / (4 + 1e-6) ** 2];
    expectClose(weights, [near / (near + far), far / (near + far), 0, 0], 1e-15);
  });

  test('measures to the segment, not to the line or the base', () => {
    const boom = skinBone('boom', [0, 0, 0], [0, HALF, 0, HALF], 2);
    const beside = (x: number, y: number) => skinBone('beside', [x, y, 0], aboutZ(0), 0.001);
    // The boom lies along +x from 0 to 2: 1 m above its middle; 1 m beyond its tip; 1 m before its base.
    for (const [x, y] of [
      [1, 1],
      [3, 0],
      [-1, 0],
    ] as const) {
      const { weights } = pulls([boom, beside(x, y + 1)], [x, y, 0]);
      expectClose(weights[0]!, weights[1]!, 1e-12);
    }
  });

  test('takes the four nearest, nearest first, and among equals the earlier in the document', () => {
    const bones = [5, 1, 4, 2, 3, 1].map((x, i) => skinBone(`rib_${i}`, [x, 0, 0]));
    expect(pulls(bones, [0, 0, 0]).indices).toEqual([1, 5, 3, 4]);
  });

  test('takes only bones of role skin, told by their place in the document', () => {
    const bones = [{ ...skinBone('wind', [0, 0, 0]), role: 'control' as const }, skinBone('vane', [9, 0, 0])];
    expect(pulls(bones, [0, 0, 0])).toEqual({ indices: [1, 0, 0, 0], weights: [1, 0, 0, 0] });
  });

  test('a vertex on a bone is almost wholly its own', () => {
    const { weights } = pulls([skinBone('boom', [0, 0, 0]), skinBone('hook', [1, 0, 0])], [0, 0, 0.5]);
    expectClose(weights[1]!, 1e-12, 1e-17);
  });

  test('gives null without a mesh', () => {
    const { mesh: _, ...rig } = rigOf([], { positions: [], triangles: [] });
    expect(bindMesh(rig)).toBeNull();
  });

  /** glTF 2.0, "Skinned Mesh Attributes": none negative, none twice, |Σ − 1| ≤ 2e-7 times how many are not zero. */
  test('obeys the weight rules of glTF on random rigs', () => {
    let vertices = 0;
    for (let seed = 0; seed < 200; seed++) {
      const rig = randomRig(seeded(seed), { mesh: true });
      if (!rig.bones.some(({ role }) => role === 'skin')) continue;
      const { indices, weights } = bindMesh(rig)!;
      for (let at = 0; at < weights.length; at += 4) {
        const pulling = [0, 1, 2, 3].filter((k) => weights[at + k]! > 0);
        expect(weights.slice(at, at + 4).every((w) => w >= 0)).toBe(true);
        expect(new Set(pulling.map((k) => indices[at + k])).size).toBe(pulling.length);
        const sum = weights.slice(at, at + 4).reduce((a, b) => a + b);
        expect(Math.abs(sum - 1)).toBeLessThanOrEqual(1e-15 * pulling.length);
        vertices++;
      }
    }
    expect(vertices).toBeGreaterThan(1000);
  });
});
