import { describe, expect, test } from 'vitest';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/2.3-keeping-the-offset';
const boom = rigOf(`${folder}/boom-and-lamp.json`);
/** Down by the angle whose sine is 0.6 and whose cosine is 0.8. */
const DOWN = [Math.sqrt(0.1), 0, 0, Math.sqrt(0.9)] as const;
const lowered: Pose = { bones: { boom: { turn: [...DOWN] } } };
const without: Pose = { switches: { 'boom.kept': 0 } };

const LAMP_REST = { base: [0, 0.5, 1.5], turn: [-Math.SQRT1_2, 0, 0, Math.SQRT1_2], length: 0.25 } as const;
/** The same lamp twice: once as the boom's child, once following it. */
const both: Rig = {
  format: 'counterpose/rig',
  version: 1,
  bones: [
    { name: 'boom', parent: null, role: 'skin', rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 2 } },
    { name: 'child', parent: 'boom', role: 'skin', rest: LAMP_REST },
    {
      name: 'follower',
      parent: null,
      role: 'skin',
      rest: LAMP_REST,
      links: [{ name: 'with', kind: 'follow', source: 'boom', offset: 'keep' }],
    },
  ],
};

/** [ahead, up] of a bone's base, metres. */
const place = (rig: Rig, pose: Pose, bone = 'lamp') => {
  const [, up, ahead] = solved(rig, pose).base(bone) as [number, number, number];
  return [ahead, up];
};
const followBoom = (more: object): Rig => ({
  ...both,
  bones: both.bones.map((bone) =>
    bone.name === 'follower'
      ? { ...bone, links: [{ name: 'with', kind: 'follow', source: 'boom', offset: 'keep', ...more }] }
      : bone,
  ),
});

// Check values: the arithmetic on the page, worked by hand.
describe('lesson 2.3 says what the solver does', () => {
  test('kept, the lamp is 1.5 ahead and 0.5 down; lost, it is on the pin', () => {
    expectClose(place(boom, lowered), [1.5, -0.5], 1e-12);
    expectClose(place(boom, { ...lowered, ...without }), [0, 0], 1e-12);
  });

  test('at rest a kept offset moves nothing, and a lost one the whole way', () => {
    expectClose([...place(boom, {}), ...place(boom, without)], [1.5, 0.5, 0, 0], 1e-12);
    expectClose(solved(boom, {}).axis('lamp', 'z'), [0, 1, 0], 1e-12);
    expectClose(solved(boom, without).axis('lamp', 'z'), [0, 0, 1], 1e-12);
  });

  test('the drawing has the lamp where the solver has it, 180 units a metre', () => {
    const [ahead, up] = place(boom, lowered);
    expectClose([20 + 180 * ahead!, 20 + 180 * up!], [290, -70], 1e-9);
  });

  test('a child and a follower go alike, and only the child obeys a pose of its own', () => {
    expectClose(place(both, lowered, 'child'), place(both, lowered, 'follower'), 1e-12);
    const nudged: Pose = { bones: { ...lowered.bones, child: { move: [0, 0, 0.1] }, follower: { move: [0, 0, 0.1] } } };
    expectClose(place(both, nudged, 'follower'), [1.5, -0.5], 1e-12);
    expectClose(place(both, nudged, 'child'), [1.56, -0.42], 1e-12);
  });

  test('turn alone turns it where it stands, move alone takes it round upright', () => {
    const turning = followBoom({ channels: ['turn'] });
    expectClose(place(turning, lowered, 'follower'), [1.5, 0.5], 1e-12);
    expectClose(solved(turning, lowered).axis('follower', 'z'), [0, 0.8, 0.6], 1e-12);
    const moving = followBoom({ channels: ['move'] });
    expectClose(place(moving, lowered, 'follower'), [1.5, -0.5], 1e-12);
    expectClose(solved(moving, lowered).axis('follower', 'z'), [0, 1, 0], 1e-12);
  });

  test('the gull goes to the left and faces right', () => {
    const gull: Rig = {
      ...followBoom({}),
      bones: followBoom({}).bones.map((bone) =>
        bone.name === 'follower' ? { ...bone, rest: { base: [0, 0, 2], turn: [0, 1, 0, 0], length: 0.2 } } : bone,
      ),
    };
    const { base, axis } = solved(gull, { bones: { boom: { turn: { angles: [0, 90, 0] } } } });
    expectClose([...base('follower'), ...axis('follower', 'z')], [2, 0, 0, -1, 0, 0], 1e-12);
    expect(solved(gull, {}).base('follower')).toEqual([0, 0, 2]);
  });
});
