import { describe, expect, test } from 'vitest';
import { skinnedRim } from '../../content/lessons/1.5-four-roles/skinned-rim.ts';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { bindMesh } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf } from './solved.ts';

const folder = 'content/lessons/1.5-four-roles';
const heron = rigOf(`${folder}/heron-head.json`);
const copied = rigOf(`${folder}/copied-seat.json`);
const NODDED: Pose = { bones: { nod: { turn: { angles: [40, 0, 0] } } } };
const BEAK = [0, 1.45, 0.4];

/** The rig with a mesh of nothing but a point. */
const withPoint = (rig: Rig, point: number[]): Rig => ({
  ...rig,
  mesh: { positions: [...point, ...point, ...point], triangles: [0, 1, 2] },
});
/** Where the point goes: [z, y] in metres. */
const goes = (rig: Rig, pose: Pose, point = BEAK) => skinnedRim(withPoint(rig, point), pose, 1, [0, 0])[0]!;
const apart = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);
const weightsOf = (rig: Rig, point = BEAK) => [...bindMesh(withPoint(rig, point))!.weights].slice(0, 3);

// Check values: the arithmetic on the page, worked by hand; chords with Math.sin and Math.cos.
describe('lesson 1.5 says what the solver does', () => {
  const radius = Math.hypot(0.3, 0.05);
  const half = (20 * Math.PI) / 180;

  test('the weights on the beak are those of the worked example', () => {
    expectClose([1 / 0.05 ** 4, 1 / radius ** 4], [160_000, 117], 0.2);
    expectClose(weightsOf(heron), [0.9993, 0.0007, 0], 5e-5);
    expectClose(weightsOf(copied), [0.4998, 0.4998, 0.0004], 5e-5);
  });

  test('the beak goes along the chord, with a copied seat half of it', () => {
    expectClose(radius, 0.304, 5e-4);
    expectClose(2 * radius * Math.sin(half), 0.208, 5e-4);
    const rest = [0.4, 1.45];
    expectClose(apart(goes(heron, NODDED), rest), 0.208, 5e-4);
    expectClose(apart(goes(copied, NODDED), rest), 0.104, 5e-4);
    expectClose(apart(goes(copied, NODDED), [0.1, 1.4]), 0.286, 5e-4);
    expectClose(radius * Math.cos(half), 0.286, 5e-4);
  });

  test('at rest no weights show', () => {
    const same = skinnedRim(copied, {}, 1, [0, 0]);
    for (const [i, point] of skinnedRim(heron, {}, 1, [0, 0]).entries()) expectClose(point, same[i]!, 1e-14);
  });

  test('sliding the ring does nothing to the mesh', () => {
    expect(goes(heron, { bones: { nod: { move: [0, 0.1, 0] } } })).toEqual(goes(heron, {}));
  });

  test('at a half-turn, half and half closes to the joint', () => {
    const over = goes(copied, { bones: { nod: { turn: [1, 0, 0, 0] } } });
    expectClose(apart(over, [0.1, 1.4]), 0, 5e-4);
  });

  test('Bellows’ stray ring draws a seventeenth', () => {
    const bone = (name: string, y: number) =>
      ({ name, parent: null, role: 'skin', rest: { base: [0, y, 0], turn: [0, 0, 0, 1], length: 0.2 } }) as const;
    const rig: Rig = { format: 'counterpose/rig', version: 1, bones: [bone('chest', 0), bone('breath', 0.15)] };
    const [z, y] = goes(rig, { bones: { breath: { move: [0, 0, 0.34] } } }, [0, 0.05, 0.1]);
    expectClose([z - 0.1, y], [0.02, 0.05], 2e-5);
    expectClose([34 / 2, 34 / 3, 34 / 5], [17, 11.3, 6.8], 0.04);
  });
});
