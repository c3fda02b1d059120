import {
  VRMAimConstraint,
  type VRMNodeConstraint,
  VRMRollConstraint,
  VRMRotationConstraint,
} from '@pixiv/three-vrm-node-constraint';
import { Object3D } from 'three';
import { expect, test } from 'vitest';
import type { AxisName, Bone, Link, Quat, Vec3 } from '../../src/solver/index.ts';
import { expectSameTurn, turnDistance } from '../support/close.ts';
import { between, pick, type Random, seeded, unitQuaternion } from '../support/random.ts';
import { bone, NONE, stand } from './stage.ts';

/** Three links against the constraints of VRMC_node_constraint 1.0 as @pixiv/three-vrm-node-constraint 3.5 has them. */

const AXES: [AxisName, VRMAimConstraint['aimAxis']][] = [
  ['+x', 'PositiveX'],
  ['-x', 'NegativeX'],
  ['+y', 'PositiveY'],
  ['-y', 'NegativeY'],
  ['+z', 'PositiveZ'],
  ['-z', 'NegativeZ'],
];

const point = (random: Random): Vec3 => [between(random, -1, 1), between(random, -1, 1), between(random, -1, 1)];

function object(parent: Object3D | null, base: Vec3, turn: Quat): Object3D {
  const made = new Object3D();
  made.position.set(...base);
  made.quaternion.set(...turn);
  parent?.add(made);
  return made;
}

/** The rest turn, in rig space, of a bone whose turn in its parent's frame is known. */
const under = (parent: Quat, own: Quat): Quat => {
  const outer = object(null, [0, 0, 0], parent);
  const inner = object(outer, [0, 0, 0], own);
  outer.updateMatrixWorld(true);
  return inner.getWorldQuaternion(inner.quaternion.clone()).toArray() as unknown as Quat;
};

function worldTurn(of: Object3D): Quat {
  let root: Object3D = of;
  while (root.parent) root = root.parent;
  root.updateMatrixWorld(true);
  return of.getWorldQuaternion(of.quaternion.clone()).toArray() as unknown as Quat;
}

const weightOf = (random: Random) => pick(random, [0.25, 0.5, 1, random()]);

/**
 * Part weights go by three's slerp, which blends straight where the quaternions' dot is 0.9995 or more: at that angle
 * θ = 0.0316, off by θ³·t(1 − t)(1 − 2t)/6 ≤ 5.1e-7, which is 1.3e-13 of 1 − |dot|.
 */
const toleranceOf = (weight: number) => (weight === 1 ? 1e-26 : 1.4e-13);

interface Case {
  ours: Quat;
  theirs: Quat;
  weight: number;
}

/** 1,000 seeded cases, whole and part weights apart; prints the worst of the whole ones. */
function agrees(name: string, seed: number, caseOf: (random: Random) => Case): void {
  const random = seeded(seed);
  let worst = 0;
  for (let i = 0; i < 1000; i++) {
    const { ours, theirs, weight } = caseOf(random);
    expectSameTurn(ours, theirs, toleranceOf(weight), `case ${i}`);
    if (weight === 1) worst = Math.max(worst, turnDistance(ours, theirs));
  }
  console.log(`${name} against three-vrm-node-constraint: worst 1 − |dot| at weight 1: ${worst.toExponential(2)}`);
  expect(worst).toBeGreaterThan(0);
}

function applied(constraint: VRMNodeConstraint, pose: () => void): Quat {
  constraint.setInitState();
  pose();
  constraint.update();
  return worldTurn(constraint.destination);
}

test('aim: the shortest turn from rest', () => {
  agrees('aim', 51, (random) => {
    const [axis, aimAxis] = pick(random, AXES);
    const [parentTurn, ownRest] = [unitQuaternion(random), unitQuaternion(random)];
    const [base, target, weight] = [point(random), point(random), weightOf(random)];

    const vane = object(object(null, base, parentTurn), [0, 0, 0], ownRest);
    const constraint = new VRMAimConstraint(vane, object(null, target, NONE));
    constraint.aimAxis = aimAxis;
    constraint.weight = weight;

    const links: Link[] = [{ name: 'watch', kind: 'aim', target: { bone: 'kite' }, axis, weight }];
    const bones = [
      bone('kite', { base: target }),
      bone('post', { base, turn: parentTurn }),
      bone('vane', { parent: 'post', base, turn: under(parentTurn, ownRest), links }),
    ];
    return { ours: stand(bones).vane.turn, theirs: applied(constraint, () => {}), weight };
  });
});

/** Source and constrained bone side by side under one parent, at rest in one turn; only the source is posed. */
function sideBySide(random: Random, link: Link, make: (twin: Object3D, source: Object3D) => VRMNodeConstraint): Case {
  const [parentTurn, rest, posed] = [unitQuaternion(random), unitQuaternion(random), unitQuaternion(random)];
  const weight = link.weight ?? 1;
  const post = object(null, [0, 0, 0], parentTurn);
  const source = object(post, [0, 0, 0], rest);
  const constraint = make(object(post, [0, 0, 0], rest), source);
  constraint.weight = weight;
  const theirs = applied(constraint, () => source.quaternion.set(...under(rest, posed)));

  const turn = under(parentTurn, rest);
  const bones: Bone[] = [
    bone('post', { turn: parentTurn }),
    bone('otter_arm', { parent: 'post', turn }),
    bone('otter_cuff', { parent: 'post', turn, links: [link] }),
  ];
  return { ours: stand(bones, { otter_arm: { turn: posed } }).otter_cuff.turn, theirs, weight };
}

test('roll: a share of the twist about z', () => {
  agrees('share', 52, (random) => {
    const weight = weightOf(random);
    const link: Link = { name: 'cuff', kind: 'share', source: 'otter_arm', fraction: 1, weight };
    return sideBySide(random, link, (twin, source) => {
      const constraint = new VRMRollConstraint(twin, source);
      constraint.rollAxis = 'Z';
      return constraint;
    });
  });
});

test('rotation: a follow of the turn, its offset kept', () => {
  agrees('follow', 53, (random) => {
    const weight = weightOf(random);
    const link: Link = {
      name: 'ride',
      kind: 'follow',
      source: 'otter_arm',
      channels: ['turn'],
      offset: 'keep',
      weight,
    };
    return sideBySide(random, link, (twin, source) => new VRMRotationConstraint(twin, source));
  });
});
