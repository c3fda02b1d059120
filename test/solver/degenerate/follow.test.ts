/** Follow at half-turns, with sizes that are zero or negative, and through shear. Hand-worked from the format. */
import { describe, expect, it } from 'vitest';
import type { FollowLink, Quat, Vec3 } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, columns, flagsOf, HALF_TURN, posed, QUARTER, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;

/** The toad follows the otter; the otter hangs under a crane that can shear it. */
const following = (link: Partial<FollowLink> = {}) =>
  rigOf([
    bone('crane'),
    bone('otter', { parent: 'crane', at: [0, 1, 0] }),
    bone('toad', { at: [1, 0, 0], links: [{ name: 'copy', kind: 'follow', source: 'otter', ...link }] }),
  ]);

const half = (x: number, y: number, z: number): Quat => [x, y, z, 0];
const UNTURNED = [1, 0, 0, 0, 1, 0, 0, 0, 1];
const QUARTER_X = [1, 0, 0, 0, 0, 1, 0, -1, 0];

describe.each(SOLVERS)('follow by the %s', (_, solve) => {
  it.each<[string, Quat, number[]]>([
    ['+x', half(1, 0, 0), QUARTER_X],
    ['−x, the same half-turn', half(-1, 0, 0), QUARTER_X],
    ['a hair short of −x', [-1, 0, 0, 5e-10], QUARTER_X],
  ])('goes half-way through the half-turn about %s by its first positive component', (_says, turn, expected) => {
    const result = solve(following({ weight: 0.5, channels: ['turn'] }), posed({ otter: { turn } }));
    expectClose(columns(result, 'toad'), expected, 1e-8);
  });

  it('passes over a first component that is nearly nothing', () => {
    const result = solve(
      following({ weight: 0.5, channels: ['turn'] }),
      posed({ otter: { turn: half(-1e-10, -0.6, 0.8) } }),
    );
    // A quarter turn about n = (0, 0.6, −0.8): n nᵀ + [n]×.
    expectClose(columns(result, 'toad'), [0, -0.8, -0.6, 0.8, 0.36, -0.48, 0.6, -0.48, 0.64], 1e-9);
  });

  it('lands exactly on the source, offset none', () => {
    const result = solve(following(), posed({ otter: { turn: QUARTER.y, size: [1, 2, 3], move: [0, 0, 1] } }));
    expectClose(columns(result, 'toad'), [0, 0, -1, 0, 2, 0, 3, 0, 0], EXACT);
    expectClose(baseOf(result, 'toad'), [0, 1, 1], EXACT);
  });

  it('keeps its offset at rest, turned and sized with the source', () => {
    const result = solve(following({ offset: 'keep' }), posed({ otter: { turn: QUARTER.z, size: [2, 2, 2] } }));
    expectClose(baseOf(result, 'toad'), [2, 3, 0], EXACT);
    expectClose(columns(result, 'toad'), [0, 2, 0, -2, 0, 0, 0, 0, 2], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('blends a negative size straight through zero', () => {
    const result = solve(following({ weight: 0.5 }), posed({ otter: { size: [-1, 1, 1] } }));
    expectClose(columns(result, 'toad'), [0, 0, 0, 0, 1, 0, 0, 0, 1], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('takes a size of −1 along z as a half-turn about y and −1 along x', () => {
    const result = solve(following({ weight: 0.5 }), posed({ otter: { size: [1, 1, -1] } }));
    // Turn half-way about +y: a quarter; the sizes half-way from 1 to (−1, 1, 1).
    expectClose(columns(result, 'toad'), [0, 0, 0, 0, 1, 0, 1, 0, 0], EXACT);
  });

  it.each<[string, Vec3, Quat, number[], string[]]>([
    ['z', [2, 3, 0], QUARTER.y, [0, 0, -2, 0, 3, 0, 0, 0, 0], ['flat toad.copy']],
    ['y', [2, 0, 3], QUARTER.y, [0, 0, -2, 0, 0, 0, 3, 0, 0], ['flat toad.copy']],
    ['x', [0, 2, 3], QUARTER.y, [0, 0, 0, 0, 2, 0, 3, 0, 0], []],
    ['all three', [0, 0, 0], QUARTER.y, [0, 0, 0, 0, 0, 0, 0, 0, 0], ['flat toad.copy']],
    [
      'y and z, which leaves no orientation',
      [2, 0, 0],
      QUARTER.y,
      [0, 0, 0, 0, 0, 0, 0, 0, 0],
      ['flat toad.copy', 'shear toad.copy'],
    ],
    [
      'x and y, which leaves none either',
      [0, 0, 2],
      QUARTER.y,
      [0, 0, 0, 0, 0, 0, 0, 0, 0],
      ['flat toad.copy', 'shear toad.copy'],
    ],
    ['x and z', [0, 2, 0], QUARTER.y, [0, 0, 0, 0, 2, 0, 0, 0, 0], ['flat toad.copy']],
  ])('follows a source of no size along %s', (_says, size, turn, expected, flags) => {
    const result = solve(following(), posed({ otter: { size, turn } }));
    expectClose(columns(result, 'toad'), expected, EXACT);
    expect(flagsOf(result)).toEqual(flags);
  });

  it('drops the shear of its own and of its source, with a flag', () => {
    const pose = posed({ crane: { size: [1, 2, 1] }, otter: { turn: [0.5, 0, 0, Math.sqrt(0.75)] } });
    const result = solve(following(), pose);
    const [cos, sin] = [0.5, Math.sqrt(0.75)];
    // Third column (0, −2 sin, cos), second (0, 2 cos, sin); orient by the third.
    const long = Math.sqrt(4 * sin * sin + cos * cos);
    const z = [0, (-2 * sin) / long, cos / long];
    const y = [0, cos / long, (2 * sin) / long];
    const across = (2 * cos * cos + 2 * sin * sin) / long;
    expectClose(columns(result, 'toad'), [1, 0, 0, ...y.map((c) => c * across), ...z.map((c) => c * long)], EXACT);
    expect(flagsOf(result)).toEqual(['shear toad.copy']);
  });

  it('leaves what it does not follow', () => {
    const pose = posed({ otter: { turn: HALF_TURN.x, size: [2, 2, 2] }, toad: { turn: QUARTER.x } });
    const result = solve(following({ channels: ['move'] }), pose);
    expectClose(columns(result, 'toad'), QUARTER_X, EXACT);
    expectClose(baseOf(result, 'toad'), [0, 1, 0], EXACT);
  });

  it('is put back on the tip of its parent after the link', () => {
    const rig = rigOf([
      bone('otter', { at: [3, 3, 3] }),
      bone('crane'),
      bone('toad', {
        parent: 'crane',
        at: [0, 0, 0.5],
        attach: 'tip',
        links: [{ name: 'copy', kind: 'follow', source: 'otter' }],
      }),
    ]);
    const result = solve(rig, posed({ crane: { turn: QUARTER.y, size: [1, 1, 2] }, toad: { move: [9, 9, 9] } }));
    expectClose(baseOf(result, 'toad'), [1, 0, 0], EXACT);
    expectClose(columns(result, 'toad'), UNTURNED, EXACT);
  });
});
