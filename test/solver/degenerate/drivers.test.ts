/** Drivers at clamps, ties and ends, and what they read. Hand-worked unless a source is named. */
import { describe, expect, it } from 'vitest';
import type {
  BonePose,
  Driver,
  DriverMap,
  DriverSource,
  Quat,
  Switch,
  Vec3,
} from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, flagsOf, posed, QUARTER, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;
const STRAIGHT: DriverMap = {
  keys: [
    [0, 0],
    [1, 1],
  ],
  beyond: 'extend',
};
const DIAL: Switch = { name: 'dial', min: -1000, max: 1000, default: 0, sliding: true };

/** A driver that shows what it makes of its input as the move of a gauge along x. */
const shown = (from: DriverSource, map: DriverMap = STRAIGHT): Driver => ({
  name: 'show',
  inputs: [{ from }],
  map,
  output: { bone: 'gauge', channel: 'move.x' },
});

describe.each(SOLVERS)('drivers by the %s', (_, solve) => {
  describe('a weight', () => {
    const weighed = (value: number) => {
      const look = { name: 'copy', kind: 'follow', source: 'fish', weight: 7 } as const;
      const output = { bone: 'otter', link: 'copy', field: 'weight' } as const;
      const driver: Driver = { ...shown({ switch: 'toad.dial' }), output };
      const bones = [
        bone('toad', { switches: [DIAL] }),
        bone('fish', { at: [1, 0, 0] }),
        bone('otter', { links: [look] }),
      ];
      return solve(rigOf(bones, [driver]), posed({}, { 'toad.dial': value }));
    };

    it.each<[number, number, boolean]>([
      [0.25, 0.25, false],
      [1, 1, false],
      [1 + 1e-10, 1, false],
      [1 + 1e-8, 1, true],
      [-1e-10, 0, false],
      [-1e-8, 0, true],
      [40, 1, true],
    ])('of %f is %f, flagged %s', (value, expected, flagged) => {
      const result = weighed(value);
      expect(result.weights['otter.copy']).toBe(expected);
      expectClose(baseOf(result, 'otter'), [expected, 0, 0], EXACT);
      expect(flagsOf(result)).toEqual(flagged ? ['weight-clamped otter.copy'] : []);
    });
  });

  describe('a switch', () => {
    const switched = (value: number, driven: Partial<Switch>) => {
      const lever: Switch = { name: 'lever', min: 0, max: 1, default: 0, ...driven };
      const drivers: Driver[] = [
        { ...shown({ switch: 'toad.dial' }), name: 'pull', output: { switch: 'crane.lever' } },
        shown({ switch: 'crane.lever' }),
      ];
      const bones = [bone('toad', { switches: [DIAL] }), bone('crane', { switches: [lever] }), bone('gauge')];
      return solve(rigOf(bones, drivers), posed({}, { 'toad.dial': value, 'crane.lever': 1 }));
    };

    it.each<[string, number, Partial<Switch>, number, boolean]>([
      ['sliding, between', 0.3, { sliding: true }, 0.3, false],
      ['sliding, above', 1.5, { sliding: true }, 1, true],
      ['sliding, a hair below', -1e-10, { sliding: true }, 0, false],
      ['a little below', -1e-8, { sliding: true }, 0, true],
      ['not sliding, at the tie', 0.5, {}, 0, false],
      ['not sliding, above the tie', 0.5 + 1e-12, {}, 1, false],
      ['not sliding, at a tie off zero', 2, { min: 1, max: 3, default: 3 }, 1, false],
      ['not sliding, far above', 9, {}, 1, true],
    ])('%s', (_says, value, driven, expected, flagged) => {
      const result = switched(value, driven);
      expectClose(baseOf(result, 'gauge')[0], expected, EXACT);
      expect(result.flags).toEqual(flagged ? [{ flag: 'switch-clamped', bone: 'crane', link: null }] : []);
    });
  });

  describe('an input', () => {
    const reading = (from: DriverSource, crane: BonePose, hook: BonePose) => {
      const bones = [bone('crane'), bone('hook', { parent: 'crane', at: [0, 1, 0], turned: QUARTER.z }), bone('gauge')];
      return baseOf(solve(rigOf(bones, [shown(from)]), posed({ crane, hook })), 'gauge')[0];
    };
    const turnAbout = (axis: 'x' | 'y' | 'z', turn: Quat) => reading({ turn: { bone: 'hook', axis } }, {}, { turn });
    const HALF_TURNS: Record<'x' | 'y' | 'z', Quat> = { x: [1, 0, 0, 0], y: [0, 1, 0, 0], z: [0, 0, 1, 0] };

    it.each(['x', 'y', 'z'] as const)('of turn about %s goes from −180° (not) to 180°', (axis) => {
      const i = 'xyz'.indexOf(axis);
      const about = (rad: number) =>
        [0, 1, 2].map((j) => (j === i ? Math.sin(rad / 2) : 0)).concat(Math.cos(rad / 2)) as unknown as Quat;
      expectClose(turnAbout(axis, about(0.5)), 90 / Math.PI, EXACT * 100);
      expectClose(turnAbout(axis, about(-2)), -360 / Math.PI, EXACT * 100);
      expectClose(turnAbout(axis, HALF_TURNS[axis]), 180, EXACT * 100);
      expectClose(turnAbout(axis, HALF_TURNS[axis].map((c) => -c) as unknown as Quat), 180, EXACT * 100);
      expectClose(turnAbout(axis, about(-Math.PI + 5e-10)), 180, 1e-7);
      expectClose(turnAbout(axis, about(-Math.PI + 1e-6)), -180, 1e-4);
    });

    it('of turn is 0 where the twist is undefined', () => {
      expect(turnAbout('z', HALF_TURNS.x)).toBe(0);
      expect(turnAbout('x', HALF_TURNS.y)).toBe(0);
    });

    it('of twist alone agrees with the swing-twist decomposition (check values C10, C11)', () => {
      const turn: Quat = [
        0.39190384,
        0.36042341,
        0.43967974,
        Math.sqrt(1 - 0.39190384 ** 2 - 0.36042341 ** 2 - 0.43967974 ** 2),
      ];
      expectClose(turnAbout('y', turn), 52.97343414, 1e-5);
      expectClose(turnAbout('x', turn), 56.89895147, 1e-5);
      expectClose(turnAbout('z', turn), 62.58795392, 1e-5);
    });

    it.each<[string, BonePose, number]>([
      ['as posed', {}, 0.3],
      ['under a sized and turned parent', { size: [2, 3, 4], turn: QUARTER.y }, 0.3],
      ['under a mirrored parent', { size: [-1, 1, 1] }, 0.3],
      ['as 0 under a parent of no size', { size: [1, 1, 0] }, 0],
    ])('of shift reads the move %s', (_says, crane, expected) => {
      const hook = { move: [0.3, -0.2, 0.1] as Vec3 };
      expectClose(reading({ shift: { bone: 'hook', axis: 'x' } }, crane, hook), expected, EXACT);
    });

    it('of gap is a distance in rig space', () => {
      const gap: DriverSource = { gap: [{ bone: 'crane' }, { bone: 'hook', at: 0.5 }] };
      expectClose(reading(gap, { size: [1, 4, 3] }, {}), Math.hypot(4, 0.75), EXACT);
    });

    it('counts times its factor, factor by factor', () => {
      const bones = [bone('toad', { switches: [DIAL] }), bone('gauge')];
      const inputs = [2, -0.5, 0].map((times) => ({ from: { switch: 'toad.dial' }, times }));
      const rig = rigOf(bones, [{ ...shown({ switch: 'toad.dial' }), inputs }]);
      expectClose(baseOf(solve(rig, posed({}, { 'toad.dial': 3 })), 'gauge')[0], 4.5, EXACT);
    });
  });

  it('turns by driven angles in the turn order, to the right of the pose', () => {
    const driver = (channel: 'turn.x' | 'turn.z'): Driver => ({
      ...shown({ switch: 'toad.dial' }),
      name: channel.replace('.', '_'),
      output: { bone: 'vane', channel },
    });
    const rig = (turnOrder: 'xyz' | 'zyx') =>
      rigOf([bone('toad', { switches: [DIAL] }), bone('vane', { turnOrder })], [driver('turn.x'), driver('turn.z')]);
    const turned = (turnOrder: 'xyz' | 'zyx', turn: Quat) =>
      column(solve(rig(turnOrder), posed({ vane: { turn } }, { 'toad.dial': 90 })), 'vane', 'x');
    expectClose(turned('xyz', [0, 0, 0, 1]), [0, 0, 1], EXACT);
    expectClose(turned('zyx', [0, 0, 0, 1]), [0, 1, 0], EXACT);
    expectClose(turned('xyz', QUARTER.y), [1, 0, 0], EXACT);
  });

  it('adds the driven move to the pose, in the rest frame', () => {
    const rig = rigOf(
      [bone('toad', { switches: [DIAL] }), bone('gauge', { turned: QUARTER.z })],
      [shown({ switch: 'toad.dial' })],
    );
    const result = solve(rig, posed({ gauge: { move: [1, 0, 0] } }, { 'toad.dial': 2 }));
    expectClose(baseOf(result, 'gauge'), [0, 3, 0], EXACT);
    expectClose(columns(result, 'gauge'), [0, 1, 0, -1, 0, 0, 0, 0, 1], EXACT);
  });

  it('writes a fraction without clamping it', () => {
    const link = { name: 'roll', kind: 'share', source: 'paw', fraction: -99 } as const;
    const output = { bone: 'helper', link: 'roll', field: 'fraction' } as const;
    const bones = [bone('toad', { switches: [DIAL] }), bone('paw'), bone('helper', { links: [link] })];
    const rig = rigOf(bones, [{ ...shown({ switch: 'toad.dial' }), output }]);
    const result = solve(rig, posed({ paw: { turn: { angles: [0, 0, 30] } } }, { 'toad.dial': 3 }));
    expectClose(column(result, 'helper', 'x'), [0, 1, 0], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });
});
