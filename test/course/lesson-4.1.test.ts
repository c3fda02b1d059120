import { describe, expect, test } from 'vitest';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/4.1-a-bone-that-spans-two-points';
const rope = rigOf(`${folder}/rope.json`);
const taut = rigOf(`${folder}/taut.json`);
const leash = rigOf(`${folder}/leash.json`);
const DEG = Math.PI / 180;
type V = readonly number[];

const lengthOf = (v: V) => Math.hypot(...v);
const minus = (a: V, b: V) => a.map((part, i) => part - b[i]!);

/** A bone in a pose: its third column, and a point at a share of it counted from its base, [ahead, up] in metres. */
function spanned(rig: Rig, bone: string, pose: Pose) {
  const { axis, base, flags } = solved(rig, pose);
  const { length } = rig.bones.find(({ name }) => name === bone)!.rest;
  const column = axis(bone, 'z');
  const at = (share: number) => [column[2]! * length * share, column[1]! * length * share];
  return { column, base: base(bone), at, length: lengthOf(column) * length, thick: lengthOf(axis(bone, 'x')), flags };
}
const hookAt = (ahead: number, up = 0) => spanned(rope, 'rope', moved('hook', 0, up, ahead));
const tautAt = (weight: number) => spanned(taut, 'rope', { switches: { 'hook.taut': weight } });
const angleDeg = ([ahead, up]: V) => Math.atan2(ahead!, -up!) / DEG;

// All numbers are arithmetic on the page, from right triangles; the meaning of a span is the rig format's.
describe('lesson 4.1 says what the solver does', () => {
  test('the worked example: the hook 1.5 m ahead', () => {
    const { at, length, thick, column } = hookAt(1.5);
    expectClose(at(1), [1.5, -2], 1e-14);
    expectClose(at(0.5), [0.75, -1], 1e-14);
    expectClose(length, 2.5, 1e-14);
    expectClose(lengthOf(column), 1.25, 1e-14);
    expectClose(thick, 1, 1e-14);
    expectClose(angleDeg(at(1)), 36.87, 5e-3);
  });

  test('the third column is the way to the target over the length of the bone, wherever boom and hook are', () => {
    for (const [ahead, up, boomDeg] of [
      [1.5, 0.3, 12],
      [-0.7, -0.5, -8],
      [2, 1.4, 20],
    ] as const) {
      const pose: Pose = {
        bones: { hook: { move: [0.4, up, ahead] }, boom: { turn: { angles: [boomDeg, 0, 0] } } },
      };
      const { column, base } = spanned(rope, 'rope', pose);
      const way = minus([0.4, up - 2, ahead], base);
      expectClose(
        column,
        way.map((part) => part / 2),
        1e-14,
      );
      const boomTip = [0, -2 * Math.sin(boomDeg * DEG), 2 * Math.cos(boomDeg * DEG) - 2];
      expectClose(base, boomTip, 1e-14);
    }
  });

  test('at rest nothing moves, and a hook that only turns moves nothing', () => {
    expectClose(hookAt(0).at(1), [0, -2], 1e-15);
    const spun = spanned(rope, 'rope', { bones: { hook: { turn: [0, 0.6, 0, 0.8], move: [0, 0, 1.5] } } });
    expect(spun.column).toEqual(hookAt(1.5).column);
  });

  test('a hook brought up to the end of the boom draws the rope in, and on it the rope is 2 m long again', () => {
    expectClose(hookAt(0, 1.9).length, 0.1, 1e-14);
    expectClose(hookAt(0, 1.99).length, 0.01, 1e-14);
    const there = hookAt(0, 2);
    expectClose(there.at(1), [0, -2], 1e-15);
    expect(there.flags).toEqual(['aim-undefined']);
    expectClose(hookAt(0.01, 2).at(1), [0.01, 0], 1e-14);
    expectClose(hookAt(-0.01, 2).at(1), [-0.01, 0], 1e-14);
  });

  test('a hook out of place makes the rope leap as the page says', () => {
    expectClose(tautAt(0).at(1), [0, -2], 1e-15);
    const whole = tautAt(1);
    expectClose(whole.at(1), [0.7, -2.4], 1e-14);
    expectClose([whole.length, angleDeg(whole.at(1))], [2.5, 16.26], 5e-3);
    expectClose(lengthOf(minus(whole.at(1), [0, -2])), 0.81, 5e-3);
    const half = tautAt(0.5);
    expectClose([half.length, angleDeg(half.at(1))], [2.25, 8.13], 5e-3);
    expectClose(half.at(1), [0.318, -2.227], 5e-4);
  });

  test('on the plumb line but too low it still gets longer', () => {
    const { at } = spanned(taut, 'rope', { bones: { hook: { move: [0, 0, -0.7] } }, switches: { 'hook.taut': 1 } });
    expectClose(at(1), [0, -2.4], 1e-14);
  });

  test('the leash is as the answer says', () => {
    const handAt = (ahead: number, up: number) =>
      spanned(leash, 'leash', moved('hand', 0, 0.6 + up - 1.2, 0.4 + ahead - 1.2));
    const steep = (v: V) => 90 - angleDeg([v[0]!, -v[1]!]);
    expectClose(handAt(0.8, 0.6).at(1), [0.8, 0.6], 1e-14);
    const shot = handAt(0.5, 1.2);
    expectClose(shot.length, 1.3, 1e-14);
    expectClose(shot.at(0.5), [0.25, 0.6], 1e-14);
    expectClose(steep(shot.at(1)), 67.38, 5e-3);
    expectClose(steep(shot.at(1)) - steep([0.8, 0.6]), 30.51, 5e-3);
    const inLine = handAt(1, 0.75);
    expectClose(inLine.length, 1.25, 1e-14);
    expectClose(steep(inLine.at(1)), 36.87, 5e-3);
  });
});
