import { describe, expect, test } from 'vitest';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/2.2-following-all';
const two = rigOf(`${folder}/free-and-attached.json`);
/** Down by the angle whose sine is 0.6 and whose cosine is 0.8. */
const DOWN = [Math.sqrt(0.1), 0, 0, Math.sqrt(0.9)] as const;
const POSE: Pose = { bones: { pull: { move: [0, 0.06, 0.08], turn: [...DOWN] } } };

/** Where a bone's base and tip are, [ahead, up] in metres; `long` is its length times its size. */
function ends(rig: Rig, pose: Pose, bone: string, long = 0.3) {
  const { base, axis } = solved(rig, pose);
  const [, up, ahead] = base(bone) as [number, number, number];
  const [, y, z] = axis(bone, 'z') as [number, number, number];
  return { base: [ahead, up], tip: [ahead + long * z, up + long * y] };
}
const withBone = (rig: Rig, name: string, change: object): Rig => ({
  ...rig,
  bones: rig.bones.map((bone) => (bone.name === name ? { ...bone, ...change } : bone)),
});

// Check values: the arithmetic on the page, worked by hand.
describe('lesson 2.2 says what the solver does', () => {
  test('the free muzzle lies on its helper, the attached one on its skull', () => {
    const free = ends(two, POSE, 'muzzle_free');
    expectClose([...free.base, ...free.tip], [0.48, 1.06, 0.72, 0.88], 1e-12);
    expect(free).toEqual(ends(two, POSE, 'helper_free'));
    // The lower dog stands 0.6 m lower.
    const attached = ends(two, POSE, 'muzzle_attached');
    expectClose([...attached.base, ...attached.tip], [0.4, 0.4, 0.64, 0.22], 1e-12);
    const helper = ends(two, POSE, 'helper_attached');
    expectClose([helper.tip[0]! - attached.tip[0]!, helper.tip[1]! - attached.tip[1]!], [0.08, 0.06], 1e-12);
  });

  test('at weight 1 with all channels the parent no longer counts', () => {
    const orphan = withBone(two, 'muzzle_free', { parent: null });
    expect(solved(orphan, POSE).base('muzzle_free')).toEqual(solved(two, POSE).base('muzzle_free'));
  });

  test('on an attached bone all channels do as much as turn and size', () => {
    const links = [{ name: 'with', kind: 'follow', source: 'helper_attached', channels: ['turn', 'size'] }];
    const fewer = withBone(two, 'muzzle_attached', { links });
    expect(ends(fewer, POSE, 'muzzle_attached')).toEqual(ends(two, POSE, 'muzzle_attached'));
  });

  test('half-way is where the second plate draws it, 300 units a metre', () => {
    const half = withBone(two, 'muzzle_free', {
      links: [{ name: 'with', kind: 'follow', source: 'helper_free', weight: 0.5 }],
    });
    const pose: Pose = { bones: { pull: { move: [0, 0.18, 0.24], turn: [...DOWN] } } };
    const drawn = ([ahead, up]: number[]) => [170 + 300 * (ahead! - 0.4), 90 + 300 * (up! - 1)];
    const { base, tip } = ends(half, pose, 'muzzle_free', 0.4);
    expectClose([...drawn(base), ...drawn(tip)], [206, 117, 319.8, 79.1], 0.06);
    const helper = ends(half, pose, 'helper_free', 0.4);
    expectClose([...drawn(helper.base), ...drawn(helper.tip)], [242, 144, 338, 72], 0.06);
  });

  test('the Heron’s beak, attached and free', () => {
    const bone = (name: string, parent: string | null, z: number, more: object) =>
      ({ name, parent, role: 'skin', rest: { base: [0, 1.4, z], turn: [0, 0, 0, 1], length: 0.3 }, ...more }) as const;
    const links = [{ name: 'with', kind: 'follow', source: 'helper' }] as const;
    const rig = (attach: 'tip' | 'free'): Rig => ({
      format: 'counterpose/rig',
      version: 1,
      bones: [bone('skull', null, 0, {}), bone('helper', null, 0.3, {}), bone('beak', 'skull', 0.3, { attach, links })],
    });
    const up: Pose = { bones: { helper: { move: [0, -0.05, 0.12], turn: { angles: [-90, 0, 0] }, size: [1, 1, 2] } } };
    const attached = ends(rig('tip'), up, 'beak').tip;
    const free = ends(rig('free'), up, 'beak').tip;
    expectClose([attached[1]!, free[1]!], [2, 1.95], 1e-12);
    expectClose(Math.hypot(free[0]! - attached[0]!, free[1]! - attached[1]!), 0.13, 1e-12);
  });
});
