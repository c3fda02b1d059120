/** Each side of every threshold that the format names. Hand-worked from its text. */
import { describe, expect, it } from 'vitest';
import type { Bone, DriverSource, Quat, Rig, Vec3 } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, flagsOf, HALF_TURN, posed, rigOf, SOLVERS } from './build.ts';

const HALF = Math.sqrt(0.5);

/** About an axis by an angle a hair off half a turn. */
const nearHalfTurn = (axis: 'x' | 'y' | 'z', shortByRad: number): Quat => {
  const [sin, cos] = [Math.cos(shortByRad / 2), Math.sin(shortByRad / 2)];
  const at = { x: [sin, 0, 0], y: [0, sin, 0], z: [0, 0, sin] }[axis];
  return [at[0], at[1], at[2], cos];
};

const gauge = (from: DriverSource): Pick<Rig, 'drivers'> => ({
  drivers: [
    {
      name: 'show',
      inputs: [{ from }],
      map: {
        keys: [
          [0, 0],
          [1, 1],
        ],
        beyond: 'extend',
      },
      output: { bone: 'gauge', channel: 'move.x' },
    },
  ],
});

describe.each(SOLVERS)('thresholds of the %s', (_, solve) => {
  it.each<[string, Vec3, boolean]>([
    ['just under 1e-9', [1e-9, 1e-9, 0.5e-9], true],
    ['just over 1e-9', [1e-9, 1e-9, 4e-9], false],
    ['0', [1, 1, 0], true],
  ])('g %s', (_says, size, flat) => {
    const box = { min: [0, 0, 0], max: [0.25, 0.25, 0.25] } as const;
    const links: Bone['links'] = [{ name: 'keep', kind: 'limit', move: box }];
    const rig: Rig = {
      ...rigOf([
        bone('crane'),
        bone('hook', { parent: 'crane', links, inherits: 'all' }),
        bone('chain', { parent: 'crane', links: [{ name: 'pull', kind: 'span', target: { bone: 'fish' } }] }),
        bone('plumb', { parent: 'crane' }),
        bone('fish', { at: [0, 0, 2] }),
        bone('gauge'),
      ]),
      ...gauge({ shift: { bone: 'plumb', axis: 'x' } }),
    };
    const result = solve(rig, posed({ crane: { size }, hook: { move: [1, 0, 0] }, plumb: { move: [3, 0, 0] } }));
    expectClose(baseOf(result, 'hook')[0] / size[0], flat ? 1 : 0.25, 1e-9);
    expectClose(column(result, 'chain', 'z')[2], flat ? size[2] : 4, 1e-9);
    expectClose(baseOf(result, 'gauge')[0], flat ? 0 : 3, 1e-9);
    expect(flagsOf(result).includes('flat chain.pull')).toBe(flat);
    expect(flagsOf(result).includes('flat hook.keep')).toBe(flat);
  });

  it.each([
    [1e-9, true],
    [4e-9, false],
  ])('a twist of a source %f rad short of a half-turn swing is undefined: %s', (shortBy, undefinedTwist) => {
    const links: Bone['links'] = [{ name: 'roll', kind: 'share', source: 'paw', fraction: 1 }];
    const result = solve(
      rigOf([bone('paw'), bone('helper', { links })]),
      posed({ paw: { turn: nearHalfTurn('x', shortBy) } }),
    );
    expect(flagsOf(result)).toEqual(undefinedTwist ? ['twist-undefined helper.roll'] : []);
  });

  it.each([
    [0.5e-9, [1, 0, 0]],
    [3e-9, [-1, 0, 0]],
  ])('a follow %f rad short of a half-turn about −y goes by its positive axis or not', (shortBy, forward) => {
    const links: Bone['links'] = [{ name: 'copy', kind: 'follow', source: 'fish', weight: 0.5 }];
    const [x, y, z, w] = nearHalfTurn('y', shortBy);
    const result = solve(rigOf([bone('fish'), bone('toad', { links })]), posed({ fish: { turn: [-x, -y, -z, w] } }));
    expectClose(column(result, 'toad', 'z'), forward, 1e-8);
  });

  it.each([
    [1.5e-9, [0, HALF, HALF]],
    [0.5e-9, [HALF, 0, HALF]],
  ])('a limit %f off straight back swings about its own axis or about +y', (off, expected) => {
    // From below: pitch −180° and a hair. The cone brings it forward along its swing, or by the +x side.
    const links: Bone['links'] = [{ name: 'keep', kind: 'limit', cone: 45 }];
    const result = solve(rigOf([bone('neck', { links })]), posed({ neck: { turn: nearHalfTurn('x', -off) } }));
    expectClose(column(result, 'neck', 'z').map(Math.abs), expected, 1e-6);
  });

  it.each([
    [0.9e-9, true],
    [1.1e-9, false],
  ])('an aim %f off opposite takes the half-turn about the axis least along it: %s', (off, opposite) => {
    const links: Bone['links'] = [{ name: 'look', kind: 'aim', target: { bone: 'fish' }, weight: 0.5 }];
    const result = solve(rigOf([bone('fish', { at: [off, 0, -1] }), bone('heron', { links })]));
    expectClose(column(result, 'heron', 'z'), opposite ? [0, -1, 0] : [1, 0, 0], 1e-8);
  });

  it.each([
    [0.9e-6, [0, 0.5, 0]],
    [1.1e-6, [-0.5, 0, 0]],
  ])('a limb bent by %f rad has its hinge from its bend or from its upper', (bend, elbow) => {
    const bent: Quat = [0, Math.sin(bend / 2), 0, Math.cos(bend / 2)];
    const jib = bone('jib', {
      parent: 'boom',
      at: [0, 0, 0.5],
      turned: bent,
      links: [{ name: 'lift', kind: 'reach', target: { bone: 'load' } }],
    });
    const result = solve(rigOf([bone('load', { at: [0, 0, 1e-4] }), bone('boom'), jib]));
    expectClose(baseOf(result, 'jib'), elbow, 1e-3);
  });

  it.each([
    [0.9e-9, ['reach-undefined jib.lift']],
    [1.1e-9, []],
  ])('a load %f m from the base of the limb', (distance, flags) => {
    const jib = bone('jib', {
      parent: 'boom',
      at: [0, 0, 0.5],
      links: [{ name: 'lift', kind: 'reach', target: { bone: 'load' } }],
    });
    expect(flagsOf(solve(rigOf([bone('load', { at: [distance, 0, 0] }), bone('boom'), jib])))).toEqual(flags);
  });

  it.each([
    [0.9e-6, []],
    [1.1e-6, ['shear toad.keep']],
  ])('a shear of %f of the largest size', (shear, flags) => {
    // Turned by a small angle a about x under a parent of size (1, 1, 2): second column (0, 1, 2a), third (0, −a, 2),
    // so the second leans on the third by 2a − a/2, which is 3/4·a of the largest size, 2.
    const angle = shear / 0.75;
    const links: Bone['links'] = [{ name: 'keep', kind: 'limit', cone: 180 }];
    const turn: Quat = [Math.sin(angle / 2), 0, 0, Math.cos(angle / 2)];
    const result = solve(
      rigOf([bone('otter'), bone('toad', { parent: 'otter', links })]),
      posed({ otter: { size: [1, 1, 2] }, toad: { turn } }),
    );
    expect(flagsOf(result)).toEqual(flags);
  });

  it('a swing of half a turn does not turn what shares it', () => {
    const links: Bone['links'] = [{ name: 'roll', kind: 'share', source: 'paw', fraction: 1 }];
    const result = solve(rigOf([bone('paw'), bone('helper', { links })]), posed({ paw: { turn: HALF_TURN.y } }));
    expectClose(column(result, 'helper', 'x'), [1, 0, 0], 1e-12);
  });
});
