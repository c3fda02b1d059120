/** Aim where it is undefined, opposite or free to roll. Hand-worked from the format unless a source is named. */
import { describe, expect, it } from 'vitest';
import type { AimLink, Quat, Vec3 } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, flagsOf, HALF_TURN, posed, QUARTER, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;
const HALF = Math.sqrt(0.5);

/** The heron looks at a fish. */
const looking = (fish: Vec3, link: Partial<AimLink> = {}) =>
  rigOf([
    bone('fish', { at: fish }),
    bone('reed'),
    bone('heron', { links: [{ name: 'look', kind: 'aim', target: { bone: 'fish' }, ...link }] }),
  ]);

const rotated = ([x, y, z, w]: Quat) => [
  ...[1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)],
  ...[2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)],
  ...[2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)],
];

describe.each(SOLVERS)('aim by the %s', (_, solve) => {
  it('leaves everything as it was with the target on the base, shear too', () => {
    const rig = rigOf([
      bone('toad'),
      bone('fish', { at: [0, 0, 1] }),
      bone('eye', {
        parent: 'toad',
        at: [0, 0, 1],
        links: [{ name: 'look', kind: 'aim', target: { bone: 'fish' } }],
      }),
    ]);
    const result = solve(rig, posed({ toad: { size: [1, 2, 1] }, eye: { turn: [0.5, 0, 0, Math.sqrt(0.75)] } }));
    const [cos, sin] = [0.5, Math.sqrt(0.75)];
    expectClose(columns(result, 'eye'), [1, 0, 0, 0, 2 * cos, sin, 0, -2 * sin, cos], EXACT);
    expect(flagsOf(result)).toEqual(['aim-undefined eye.look']);
  });

  it('raises nothing at weight 0', () => {
    expect(flagsOf(solve(looking([0, 0, 0], { weight: 0 })))).toEqual([]);
  });

  it('counts a target 1e-10 m away as on the base and one 1e-8 m away as not', () => {
    expect(flagsOf(solve(looking([1e-10, 0, 0])))).toEqual(['aim-undefined heron.look']);
    const result = solve(looking([1e-8, 0, 0]));
    expectClose(column(result, 'heron', 'z'), [1, 0, 0], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it.each<[string, AimLink['axis'], Vec3, number[]]>([
    ['+z about +x', '+z', [0, 0, -1], rotated(QUARTER.x)],
    ['−z about +x', '-z', [0, 0, 1], rotated(QUARTER.x)],
    ['+y about +x, first of the tie', '+y', [0, -1, 0], rotated(QUARTER.x)],
    ['+x about +y, first of the tie', '+x', [-1, 0, 0], rotated(QUARTER.y)],
    ['a vector about the axis least along it', [0.6, 0, 0.8], [-0.6, 0, -0.8], rotated(QUARTER.y)],
  ])('goes half of the half-turn the positive way: %s', (_says, axis, fish, expected) => {
    const result = solve(looking(fish, { axis: axis ?? '+z', weight: 0.5 }));
    expectClose(columns(result, 'heron'), expected, EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('goes the positive way also where the slerp rule would take the other', () => {
    const axis: Vec3 = [0.6, 0.48, 0.64];
    const across = [-0.288, 0.7696, -0.3072];
    const long = Math.sqrt(across.reduce((sum, x) => sum + x * x, 0));
    const [x, y, z] = across.map((c) => (c / long) * HALF);
    const result = solve(looking([-0.6, -0.48, -0.64], { axis, weight: 0.5 }));
    expectClose(columns(result, 'heron'), rotated([x, y, z, HALF]), EXACT);
  });

  it('ends on the target after the whole half-turn', () => {
    const result = solve(looking([0, 0, -2]));
    expectClose(columns(result, 'heron'), rotated(HALF_TURN.x), EXACT);
  });

  it('turns from opposite with an up axis by the slerp rule, for the roll makes it another half-turn', () => {
    const up = { axis: '+y', toward: { direction: [0, 3, 0] } } as const;
    expectClose(columns(solve(looking([0, 0, -2], { up })), 'heron'), rotated(HALF_TURN.y), EXACT);
    expectClose(columns(solve(looking([0, 0, -2], { up, weight: 0.5 })), 'heron'), rotated(QUARTER.y), EXACT);
  });

  it('rolls half of a half-turn by the slerp rule', () => {
    const up = { axis: '+y', toward: { direction: [0, -1, 0] } } as const;
    expectClose(columns(solve(looking([0, 0, 1], { up, weight: 0.5 })), 'heron'), rotated(QUARTER.z), EXACT);
  });

  it.each<[string, AimLink['up'], boolean]>([
    ['along d', { axis: '+y', toward: { direction: [1, 0, 0] } }, true],
    ['against d', { axis: '+y', toward: { direction: [-1, 0, 0] } }, true],
    ['within 1e-6 rad of d', { axis: '+y', toward: { direction: [1, 0, 5e-7] } }, true],
    ['2e-6 rad off d', { axis: '+y', toward: { direction: [1, 0, 2e-6] } }, false],
    ['a point on the base', { axis: '+y', toward: { bone: 'reed' } }, true],
    ['a point on the line', { axis: '+y', toward: { bone: 'fish' } }, true],
    ['a bone axis along d', { axis: '+y', toward: { bone: 'reed', axis: '+x' } }, true],
    ['a bone axis across d', { axis: '+y', toward: { bone: 'reed', axis: '+z' } }, false],
  ])('with up %s', (_says, up, undefinedUp) => {
    const result = solve(looking([1, 0, 0], { up: up! }));
    expectClose(column(result, 'heron', 'z'), [1, 0, 0], EXACT);
    expectClose(column(result, 'heron', 'y'), undefinedUp ? [0, 1, 0] : [0, 0, 1], 1e-9);
    expect(flagsOf(result)).toEqual(undefinedUp ? ['up-undefined heron.look'] : []);
  });

  it('takes +z to (1, 1, 1) with +y up (cross products; check value C8)', () => {
    const result = solve(looking([1, 1, 1], { up: { axis: '+y', toward: { direction: [0, 1, 0] } } }));
    expectClose(column(result, 'heron', 'x'), [HALF, 0, -HALF], 1e-8);
    expectClose(column(result, 'heron', 'y'), [-0.40824829, 0.81649658, -0.40824829], 1e-8);
  });

  it('takes +x to (1, 1, 0), whole and half (VRMC_node_constraint 1.0, Aim and Weight; check values C5, C6)', () => {
    const whole = solve(looking([1, 1, 0], { axis: '+x' }));
    expectClose(columns(whole, 'heron'), rotated([0, 0, 0.38268343, 0.92387953]), 2e-8);
    const half = solve(looking([1, 1, 0], { axis: '+x', weight: 0.5 }));
    expectClose(columns(half, 'heron'), rotated([0, 0, 0.19509032, 0.98078528]), 2e-8);
  });

  it('keeps base and sizes, negative ones too', () => {
    const result = solve(looking([1, 0, 0]), posed({ heron: { size: [-2, 3, 0.5] } }));
    expectClose(columns(result, 'heron'), [0, 0, 2, 0, 3, 0, 0.5, 0, 0], EXACT);
    expectClose(baseOf(result, 'heron'), [0, 0, 0], EXACT);
  });
});
