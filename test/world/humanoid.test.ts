import { describe, test } from 'vitest';
import type { Bone, Driver, Link, Point, Vec3 } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { about, axisAngle, bone, DEG, stand } from './stage.ts';

/** H-Anim figure “Joe”, ISO/IEC 19774-1:2019 §4.9.6, joint centres in metres (seen; its header says “needs check”). */
const CENTRES: Record<string, Vec3> = {
  skullbase: [0.0044, 1.6209, 0.0236],
  l_eyeball: [0.0336, 1.6332, 0.0502],
  r_eyeball: [-0.0236, 1.6331, 0.051],
  l_shoulder: [0.2029, 1.4376, -0.0387],
  l_elbow: [0.2014, 1.1357, -0.0682],
  l_radiocarpal: [0.1984, 0.8663, -0.0583],
  r_shoulder: [-0.1907, 1.4407, -0.0325],
  r_elbow: [-0.1949, 1.1388, -0.062],
  r_radiocarpal: [-0.1959, 0.8694, -0.0521],
  l_hip: [0.0961, 0.9124, -0.0001],
  l_knee: [0.104, 0.4867, 0.0308],
};
const PARENTS: Record<string, string> = {
  l_eyeball: 'skullbase',
  r_eyeball: 'skullbase',
  l_elbow: 'l_shoulder',
  l_radiocarpal: 'l_elbow',
  r_elbow: 'r_shoulder',
  r_radiocarpal: 'r_elbow',
  l_knee: 'l_hip',
};
const joints = (): Bone[] =>
  Object.entries(CENTRES).map(([name, base]) =>
    bone(name, { base, length: 0.1, ...(PARENTS[name] && { parent: PARENTS[name] }) }),
  );

/** The distance between two joints as a driver reads it. */
function gap(a: string, b: string): number {
  const points: [Point, Point] = [{ bone: a }, { bone: b }];
  const driver: Driver = {
    name: 'measure',
    inputs: [{ from: { gap: points } }],
    map: {
      keys: [
        [0, 0],
        [1, 1],
      ],
      beyond: 'extend',
    },
    output: { bone: 'gauge', channel: 'move.x' },
  };
  return stand([...joints(), bone('gauge')], {}, [driver]).gauge.base[0];
}

describe('H-Anim joint centres', () => {
  test('H4: every joint stands at its centre', () => {
    const there = stand(joints());
    for (const [name, centre] of Object.entries(CENTRES)) expectClose(there[name].base, centre, 1e-15);
  });

  test.each([
    ['l_shoulder', 'l_elbow', 0.303342],
    ['r_shoulder', 'r_elbow', 0.303367],
    ['l_elbow', 'l_radiocarpal', 0.269599],
    ['r_elbow', 'r_radiocarpal', 0.269584],
    ['l_hip', 'l_knee', 0.426893],
    ['l_eyeball', 'r_eyeball', 0.057206],
    ['skullbase', 'l_eyeball', 0.04137],
    ['l_shoulder', 'l_radiocarpal', 0.571654],
  ])('H5, H6: %s to %s is %f m', (a, b, metres) => {
    expectClose(gap(a, b), metres, 1e-6);
  });

  test('H6: the elbow at rest is bent to 172.30661°, and a reach that is there already keeps it', () => {
    const [shoulder, elbow, wrist] = ['l_shoulder', 'l_elbow', 'l_radiocarpal'].map((name) => CENTRES[name]);
    const hold: Link = { name: 'hold', kind: 'reach', target: { bone: 'rail' } };
    const bones = [
      bone('rail', { base: wrist }),
      bone('upper_arm', { base: shoulder, turn: along(shoulder, elbow), length: distance(shoulder, elbow) }),
      bone('forearm', {
        parent: 'upper_arm',
        base: elbow,
        turn: along(elbow, wrist),
        length: distance(elbow, wrist),
        attach: 'tip',
        links: [hold],
      }),
    ];
    const there = stand(bones);
    expectClose(there.forearm.base, elbow, 1e-12);
    expectClose(there.forearm.at([0, 0, distance(elbow, wrist)]), wrist, 1e-12);
    const [z, v] = [there.upper_arm, there.forearm].map(({ matrix }) => matrix.slice(8, 11));
    const bend = Math.acos(z.reduce((sum, x, i) => sum + x * v[i], 0)) / DEG;
    expectClose(180 - bend, 172.30661, 1e-5);
    expectClose(distance(shoulder, elbow) + distance(elbow, wrist), 0.57294, 1e-6);
  });

  test('H7: the left elbow turned −90° about x lifts the wrist to (0.1984, 1.1456, 0.2012) (X3D centre rule from memory)', () => {
    const { l_radiocarpal } = stand(joints(), { l_elbow: { turn: about([1, 0, 0], -90) } });
    expectClose(l_radiocarpal.base, [0.1984, 1.1456, 0.2012], 1e-12);
  });
});

const distance = (a: Vec3, b: Vec3) => Math.hypot(...a.map((x, i) => b[i] - x));

/** The turn, about an axis across both, that lays +z along a to b. */
function along(a: Vec3, b: Vec3) {
  const d = a.map((x, i) => (b[i] - x) / distance(a, b));
  return about([-d[1], d[0], 0], Math.acos(d[2]) / DEG);
}

/** VRM Consortium, VRMC_vrm 1.0, lookAt.md: yaw + is left, toward +X; its pitch + is down, ours is up (seen). */
describe('yaw and pitch of a limit', () => {
  const held = (yaw: number, pitch: number): number[] => {
    const stop: Link = { name: 'stop', kind: 'limit', yaw: [yaw, yaw], pitch: [pitch, pitch] };
    return stand([bone('eye', { links: [stop] })]).eye.matrix.slice(8, 11);
  };
  const CASES: [Vec3, number, number][] = [
    [[1, 0, 1], 45, 0],
    [[0, 1, 1], 0, -45],
    [[-1, -1, 1], -45, 35.26439],
    [[0.2, 0.1, 0.5], 21.801409, -10.519735],
  ];
  test.each(CASES)('H12, H13: %j is yaw %f° and VRM pitch %f°', (v, yaw, vrmPitch) => {
    expectClose(
      held(yaw, -vrmPitch),
      v.map((x) => x / Math.hypot(...v)),
      1e-7,
    );
  });

  test('F16: an elbow held to the mean 0° to 150° of flexion (AAOS column of a table of mean motion, seen)', () => {
    const stop: Link = { name: 'stop', kind: 'limit', yaw: [0, 150] };
    const asked = stand([bone('forearm', { links: [stop] })], { forearm: { turn: about([0, 1, 0], 170) } }).forearm;
    const { axis, angleDeg } = axisAngle(asked.turn);
    expectClose([...axis, angleDeg], [0, 1, 0, 150], 1e-12);
  });
});
