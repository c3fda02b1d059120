import { describe, test } from 'vitest';
import type { Bone, Driver, Link, Quat } from '../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../support/close.ts';
import { about, axisAngle, bone, stand } from './stage.ts';

/** The turn of SciPy's docstring example, [30°, 60°, 45°] about x, y, z in the moving frame. */
const WHOLE: Quat = [0.39190384, 0.36042341, 0.43967974, 0.72331741];
/** The same turn with the axes renamed y → z → x → y, so that its twist about y becomes one about z. */
const RENAMED: Quat = [WHOLE[2], WHOLE[0], WHOLE[1], WHOLE[3]];

/** A driver's reading of twist in degrees, written to a bone's move in metres. */
function readTwist(turn: Quat, axis: 'x' | 'y' | 'z'): number {
  const driver: Driver = {
    name: 'read',
    inputs: [{ from: { turn: { bone: 'otter_arm', axis } } }],
    map: {
      keys: [
        [0, 0],
        [1, 1],
      ],
      beyond: 'extend',
    },
    output: { bone: 'gauge', channel: 'move.x' },
  };
  return stand([bone('otter_arm'), bone('gauge')], { otter_arm: { turn: unit(turn) } }, [driver]).gauge.base[0];
}

/** The documents print eight digits; a pose takes only what is unit to 1e-6. */
function unit(q: Quat): Quat {
  const length = Math.hypot(...q);
  return q.map((x) => x / length) as unknown as Quat;
}

function sleeve(turn: Quat, link: Link): Quat {
  const bones: Bone[] = [bone('otter_arm'), bone('otter_cuff', { links: [link] })];
  return stand(bones, { otter_arm: { turn: unit(turn) } }).otter_cuff.turn;
}

/** M. B. Reynolds, Quaternion swing-twist decomposition (2022), equations for Q_ty and Q_sy (rule seen). */
describe('swing and twist', () => {
  test('C10: the twist about y is 52.97343414°', () => {
    expectClose(readTwist(WHOLE, 'y'), 52.97343414, 1e-6);
  });

  test('C10: a share of all of it turns by that about z', () => {
    const turn = sleeve(RENAMED, { name: 'cuff', kind: 'share', source: 'otter_arm', fraction: 1 });
    expectClose(turn, [0, 0, 0.44599033, 0.89503778], 1e-8);
  });

  test('C10: a limit that allows no twist leaves the swing, 72.17045601°', () => {
    const bones = [bone('otter_arm', { links: [{ name: 'stop', kind: 'limit', twist: [0, 0] }] })];
    const { turn } = stand(bones, { otter_arm: { turn: unit(RENAMED) } }).otter_arm;
    expectClose(turn, [0.21874466, 0.54686165, 0, 0.80814176], 1e-8);
    expectClose(axisAngle(turn).angleDeg, 72.17045601, 1e-6);
  });

  test('C11: the twists about x and z are 56.89895147° and 62.58795392°', () => {
    expectClose(readTwist(WHOLE, 'x'), 56.89895147, 1e-6);
    expectClose(readTwist(WHOLE, 'z'), 62.58795392, 1e-6);
  });
});

test('C12: half the roll of 80° is 40° (VRMC_node_constraint 1.0, Roll, rule seen)', () => {
  const half: Link = { name: 'cuff', kind: 'share', source: 'otter_arm', fraction: 1, weight: 0.5 };
  const byFraction: Link = { name: 'cuff', kind: 'share', source: 'otter_arm', fraction: 0.5 };
  for (const link of [half, byFraction]) {
    const { axis, angleDeg } = axisAngle(sleeve(about([0, 0, 1], 80), link));
    expectClose([...axis, angleDeg], [0, 0, 1, 40], 1e-9);
  }
});

describe('limits', () => {
  const limited = (link: Partial<Link>, turn: Quat) => {
    const links = [{ name: 'stop', kind: 'limit', ...link } as Link];
    return stand([bone('hinge', { links })], { hinge: { turn } }).hinge.turn;
  };

  test('F14: a joint limited to ±1.57 rad, asked for 3 rad, turns 1.57 rad (URDF, revolute joint limits; computed)', () => {
    const DEG = 180 / Math.PI;
    const turn = limited({ twist: [-1.57 * DEG, 1.57 * DEG] }, about([0, 0, 1], 3 * DEG));
    expectSameTurn(turn, about([0, 0, 1], 1.57 * DEG), 1e-30);
  });

  test('F14: MuJoCo humanoid elbow, −100° to 50° (model/humanoid/humanoid.xml, seen), asked for −120° and 60°', () => {
    for (const [asked, got] of [
      [-120, -100],
      [60, 50],
      [-30, -30],
    ]) {
      expectSameTurn(limited({ twist: [-100, 50] }, about([0, 0, 1], asked)), about([0, 0, 1], got), 1e-30);
    }
  });
});
