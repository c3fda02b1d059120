import { describe, expect, test } from 'vitest';
import {
  createState,
  evaluate,
  type Link,
  nearness,
  type PlaceKind,
  type Pose,
  packPose,
  type Rig,
  singularPlaces,
} from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { seeded } from '../../support/random.ts';
import { randomPose, randomRig } from '../../support/rigs.ts';
import { bone, rigOf } from '../degenerate/build.ts';
import { programFor } from '../solveRig.ts';

const twoOnQuay = (link: Link): Rig =>
  rigOf([
    bone('kite', { at: [0, 0, 1] }),
    bone('flag', { at: [0, 1, 0] }),
    bone('post'),
    bone('vane', { parent: 'post', at: [0, 0, 0.5], links: [link] }),
  ]);

function near(rig: Rig, kind: PlaceKind, pose: Pose = {}): number {
  const program = programFor(rig);
  const state = createState(program);
  const packed = packPose(program, pose);
  evaluate(program, state, packed);
  return nearness(program, state, { kind, bone: 'vane', link: 'watch' });
}
const turned = (angles: [number, number, number]): Pose => ({ bones: { vane: { turn: { angles } } } });
const rad = (deg: number) => (deg * Math.PI) / 180;

const AIM: Link = {
  name: 'watch',
  kind: 'aim',
  target: { bone: 'kite' },
  up: { axis: '+y', toward: { bone: 'flag' } },
};

describe('nearness', () => {
  test('of an aim: metres to the target, angle from opposite, sine from up along aim', () => {
    const rig = twoOnQuay(AIM);
    expectClose(near(rig, 'target-at-base'), 0.5, 1e-15);
    expectClose(near(rig, 'opposite'), Math.PI, 1e-15);
    expectClose(near(rig, 'opposite', turned([0, 170, 0])), rad(10), 1e-14);
    expectClose(near(rig, 'opposite', turned([0, 180, 0])), 0, 1e-15);
    expectClose(near(rig, 'up-along-aim'), 1 / Math.sqrt(1.25), 1e-15);
    expectClose(near(rig, 'up-along-aim', { bones: { flag: { move: [0, -1, 3] } } }), 0, 1e-15);
    expectClose(near(rig, 'target-at-base', { bones: { kite: { move: [0, 0, -0.5] } } }), 0, 1e-15);
  });
  test('of a span: before it turns the bone', () => {
    const rig = twoOnQuay({ name: 'watch', kind: 'span', target: { bone: 'kite' } });
    expectClose(near(rig, 'opposite', turned([175, 0, 0])), rad(5), 1e-14);
    expectClose(near(rig, 'target-at-base'), 0.5, 1e-15);
  });
  test('of a share and a limit: angle from the half-turn', () => {
    const share = twoOnQuay({ name: 'watch', kind: 'share', source: 'kite', fraction: 0.5 });
    expectClose(near(share, 'half-twist', { bones: { kite: { turn: { angles: [0, 0, 179] } } } }), rad(1), 1e-14);
    const limit = twoOnQuay({ name: 'watch', kind: 'limit', twist: [-90, 90] });
    expectClose(near(limit, 'half-twist', turned([0, 0, -177])), rad(3), 1e-14);
    expectClose(near(limit, 'half-twist', turned([0, 178, 0])), rad(2), 1e-14);
  });
  test('of a reach: metres from full stretch', () => {
    const rig = twoOnQuay({ name: 'watch', kind: 'reach', target: { bone: 'kite' }, pole: { bone: 'flag' } });
    expectClose(near(rig, 'full-stretch'), 0, 1e-15);
    expectClose(near(rig, 'full-stretch', { bones: { kite: { move: [0, 0, -0.25] } } }), 0.25, 1e-15);
    expectClose(near(rig, 'target-at-base'), 1, 1e-15);
    expectClose(near(rig, 'up-along-aim'), 1, 1e-15);
  });
});

test('a link of weight 0 has no singular places', () => {
  const places = singularPlaces(programFor(twoOnQuay({ ...AIM, weight: 0 })));
  expect(places).toEqual([]);
});

test('measuring leaves the state as it was', () => {
  for (let seed = 0; seed < 200; seed++) {
    const random = seeded(seed);
    const rig = randomRig(random);
    const program = programFor(rig);
    const state = createState(program);
    const pose = packPose(program, randomPose(random, rig));
    evaluate(program, state, pose);
    const before = [state.world, state.weights, state.switches, state.machine.flags].map((numbers) => [...numbers]);
    for (const place of singularPlaces(program)) expect(nearness(program, state, place)).toBeGreaterThanOrEqual(0);
    const after = [state.world, state.weights, state.switches, state.machine.flags].map((numbers) => [...numbers]);
    expect(after).toEqual(before);
  }
});
