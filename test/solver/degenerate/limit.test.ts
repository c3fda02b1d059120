/** Limit straight back, at poles of its angles and under parents of no size. Hand-worked from the format. */
import { describe, expect, it } from 'vitest';
import type { LimitLink, Quat } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, flagsOf, HALF_TURN, posed, QUARTER, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;
const SINE_45 = Math.sqrt(0.5);

/** The heron's neck may bend only so far. */
const limiting = (bounds: Partial<LimitLink>) =>
  rigOf([
    bone('body'),
    bone('neck', { parent: 'body', at: [0, 1, 0], links: [{ name: 'keep', kind: 'limit', ...bounds }] }),
  ]);

const NO_TWIST = { twist: [0, 0] } as const;
const STRAIGHT_BACK_ABOUT_Y = [-1, 0, 0, 0, 1, 0, 0, 0, -1];

describe.each(SOLVERS)('limit by the %s', (_, solve) => {
  const turned = (bounds: Partial<LimitLink>, turn: Quat) => solve(limiting(bounds), posed({ neck: { turn } }));

  it.each<[string, Partial<LimitLink>, Quat, number[]]>([
    ['yaw comes from +180°', { yaw: [-170, 90] }, HALF_TURN.y, [1, 0, 0]],
    ['by the half-turn about −y too', { yaw: [-90, 90] }, [0, -1, 0, 0], [1, 0, 0]],
    ['yaw may stay at 180°', { yaw: [0, 180] }, HALF_TURN.y, [0, 0, -1]],
    ['a cone is reached by the +x side', { cone: 45 }, HALF_TURN.y, [SINE_45, 0, SINE_45]],
    ['by the +x side after a half-turn about x', { cone: 45 }, HALF_TURN.x, [SINE_45, 0, SINE_45]],
    ['a cone of 180° lets it be', { cone: 180 }, HALF_TURN.y, [0, 0, -1]],
    ['a cone of 0° brings it to the front', { cone: 0 }, HALF_TURN.y, [0, 0, 1]],
    ['pitch is 0, yaw stays 180°', { pitch: [30, 60] }, HALF_TURN.y, [0, 0.5, -Math.sqrt(0.75)]],
  ])('from straight back: %s', (_says, bounds, turn, expected) => {
    const result = turned(bounds, turn);
    expectClose(column(result, 'neck', 'z'), expected, EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('takes the swing straight back as about +y, and the rest as twist', () => {
    expectClose(columns(turned(NO_TWIST, HALF_TURN.y), 'neck'), STRAIGHT_BACK_ABOUT_Y, EXACT);
    expectClose(columns(turned(NO_TWIST, HALF_TURN.x), 'neck'), STRAIGHT_BACK_ABOUT_Y, EXACT);
    const hair = Math.sin(2e-10);
    expectClose(columns(turned(NO_TWIST, [Math.cos(2e-10), 0, 0, hair]), 'neck'), STRAIGHT_BACK_ABOUT_Y, 1e-9);
  });

  it('swings about x when it is not quite straight back', () => {
    const angle = Math.PI - 1e-6;
    const turn: Quat = [Math.sin(angle / 2), 0, 0, Math.cos(angle / 2)];
    expectClose(columns(turned(NO_TWIST, turn), 'neck'), [1, 0, 0, 0, -1, 0, 0, 0, -1], 2e-6);
  });

  it.each<[string, Quat, number[]]>([
    ['180°', HALF_TURN.z, [0, 1, 0]],
    ['−180°, which counts as 180°', [0, 0, -1, 0], [0, 1, 0]],
    ['−180° and a hair', [0, 0, -Math.cos(2e-10), Math.sin(2e-10)], [0, 1, 0]],
    ['−180° and a little', [0, 0, -Math.cos(1e-4), Math.sin(1e-4)], [0, -1, 0]],
  ])('clamps a twist of %s', (_says, turn, expected) => {
    expectClose(column(turned({ twist: [-90, 90] }, turn), 'neck', 'x'), expected, EXACT);
  });

  it('clamps yaw and pitch, then keeps within the cone, then twist', () => {
    const result = turned({ yaw: [-30, 30], pitch: [-90, 90], cone: 20 }, QUARTER.y);
    const [sin20, cos20] = [Math.sin(Math.PI / 9), Math.cos(Math.PI / 9)];
    expectClose(columns(result, 'neck'), [cos20, 0, -sin20, 0, 1, 0, sin20, 0, cos20], EXACT);
  });

  it('keeps what is within bounds', () => {
    const turn: Quat = [0.1, -0.2, 0.3, Math.sqrt(1 - 0.14)];
    const wide = { yaw: [-180, 180], pitch: [-90, 90], twist: [-180, 180], cone: 180 } as const;
    const free = solve(
      rigOf([bone('body'), bone('neck', { parent: 'body', at: [0, 1, 0] })]),
      posed({ neck: { turn } }),
    );
    expectClose(turned(wide, turn).bones.neck.matrix, free.bones.neck.matrix, EXACT);
  });

  it('goes only part of the way at part weight', () => {
    const result = turned({ yaw: [-30, 30], weight: 0.5 }, QUARTER.y);
    const [sin60, cos60] = [Math.sqrt(0.75), 0.5];
    expectClose(column(result, 'neck', 'z'), [sin60, 0, cos60], EXACT);
  });

  const BOX = { move: { min: [-0.1, -0.1, -0.1], max: [0.1, 0.1, 0.1] } } as const;

  it('clamps the move in the rest frame under a turned and sized parent', () => {
    const pose = posed({ body: { turn: QUARTER.z, size: [2, 2, 2] }, neck: { move: [0.5, 0.05, -0.5] } });
    const result = solve(limiting(BOX), pose);
    // Rest base (−2, 0, 0); the clamped move (0.1, 0.05, −0.1) turned and doubled.
    expectClose(baseOf(result, 'neck'), [-2 - 0.1, 0.2, -0.2], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('does not clamp the move under a parent of no size, and says so', () => {
    const pose = posed({ body: { size: [1, 1, 0] }, neck: { move: [0.5, 0.5, 0.5] } });
    const result = solve(limiting(BOX), pose);
    expectClose(baseOf(result, 'neck'), [0.5, 1.5, 0], EXACT);
    expect(flagsOf(result)).toEqual(['flat neck.keep']);
  });

  it('blends the move straight', () => {
    const result = solve(limiting({ ...BOX, weight: 0.25 }), posed({ neck: { move: [0.5, 0, 0] } }));
    expectClose(baseOf(result, 'neck'), [0.4, 1, 0], EXACT);
  });

  it('drops shear once it applies, even within bounds, and not at weight 0', () => {
    const pose = posed({ body: { size: [1, 2, 1] }, neck: { turn: [0.5, 0, 0, Math.sqrt(0.75)] } });
    expect(flagsOf(solve(limiting({ cone: 180 }), pose))).toEqual(['shear neck.keep']);
    expect(flagsOf(solve(limiting({ cone: 180, weight: 0 }), pose))).toEqual([]);
  });

  it('keeps the base of an attached bone on the tip', () => {
    const rig = rigOf([
      bone('body'),
      bone('neck', {
        parent: 'body',
        at: [0, 0, 0.5],
        attach: 'tip',
        links: [{ name: 'keep', kind: 'limit', cone: 10 }],
      }),
    ]);
    const result = solve(rig, posed({ body: { turn: QUARTER.y }, neck: { turn: QUARTER.y } }));
    expectClose(baseOf(result, 'neck'), [0.5, 0, 0], EXACT);
  });
});
