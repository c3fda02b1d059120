import { describe, expect, test } from 'vitest';
import { skinnedRim } from '../../content/lessons/1.5-four-roles/skinned-rim.ts';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { bindMesh } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf } from './solved.ts';

const folder = 'content/lessons/2.6-copies-carry-their-roles';
const [leg, upper, both] = ['leg', 'upper-doubled', 'both-doubled'].map((name) => rigOf(`${folder}/${name}.json`)) as [
  Rig,
  Rig,
  Rig,
];
const BENT: Pose = { bones: { shin_helper: { turn: { angles: [90, 0, 0] } } } };
const SLID: Pose = { bones: { shin_helper: { move: [0, 0.1, 0] } } };
const KNEE = [0, 0.3, 0.05];
const SHIN = [0, 0.15, 0.05];

const withPoint = (rig: Rig, point: number[]): Rig => ({
  ...rig,
  mesh: { positions: [...point, ...point, ...point], triangles: [0, 1, 2] },
});
/** Where the point goes: [ahead, up] in centimetres from the knee. */
const goes = (rig: Rig, pose: Pose, point: number[]) => skinnedRim(withPoint(rig, point), pose, 100, [0, -30])[0]!;

// Check values: the arithmetic on the page, worked by hand; chords with Math.sin.
describe('lesson 2.6 says what the solver does', () => {
  test('half and half at the knee, two votes of three with one copy', () => {
    expectClose(goes(leg, BENT, KNEE), [2.5, -2.5], 1e-9);
    expectClose(goes(upper, BENT, KNEE), [10 / 3, -5 / 3], 1e-9);
    expectClose(Math.hypot(10 / 3 - 2.5, 2.5 - 5 / 3), 1.18, 5e-3);
    expectClose((10 * Math.sin(Math.PI / 4)) / 6, 1.18, 5e-3);
  });

  test('with both doubled the knee is as it should be', () => {
    expectClose(goes(both, BENT, KNEE), goes(leg, BENT, KNEE), 1e-9);
  });

  test('far from the joint a copy that goes along changes nothing to speak of', () => {
    expectClose(goes(upper, BENT, [0, 0.55, 0.05]), goes(leg, BENT, [0, 0.55, 0.05]), 0.03);
  });

  test('the slid helper leaves the sound leg alone and draws the doubled one along by half', () => {
    expectClose(goes(leg, SLID, SHIN), [5, -15], 1e-9);
    const [ahead] = goes(both, SLID, SHIN);
    expectClose(ahead - 5, 5, 0.06);
  });

  test('at the kink the three of the nape and one of the neck have a vote', () => {
    const bone = (name: string, y: number) =>
      ({
        name,
        parent: null,
        role: 'skin',
        rest: { base: [0, y, 0], turn: [-Math.SQRT1_2, 0, 0, Math.SQRT1_2], length: 0.3 },
      }) as const;
    const heron: Rig = {
      format: 'counterpose/rig',
      version: 1,
      bones: [
        ...['nape', 'nape_helper', 'nape_copy'].map((name) => bone(name, 0.3)),
        bone('neck', 0),
        bone('neck_helper', 0),
      ],
    };
    const { indices, weights } = bindMesh(withPoint(heron, [0, 0.3, 0.04]))!;
    expect([...indices.slice(0, 4)].sort()).toEqual([0, 1, 2, 3]);
    expectClose([...weights.slice(0, 4)], [0.25, 0.25, 0.25, 0.25], 1e-9);
    expectClose((0.75 - 0.5) * 2 * 4 * Math.sin(Math.PI / 6), 1, 1e-12);
  });
});
