/** Share at half-turns and where the twist is undefined. Hand-worked unless a source is named. */
import { describe, expect, it } from 'vitest';
import type { BonePose, Quat } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { bone, column, columns, flagsOf, posed, QUARTER, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;

/** The paw's twist shared to a helper in the marsh dog's foreleg. */
const sharing = (fraction: number, weight = 1) =>
  rigOf([
    bone('foreleg', { turned: QUARTER.y }),
    bone('paw', { parent: 'foreleg', at: [0.5, 0, 0], turned: [0.5, 0.5, 0.5, 0.5] }),
    bone('helper', { links: [{ name: 'roll', kind: 'share', source: 'paw', fraction, weight }] }),
  ]);

const twisted = (deg: number): number[] => {
  const rad = (deg * Math.PI) / 180;
  return [Math.cos(rad), Math.sin(rad), 0];
};

const aboutZ = (rad: number): Quat => [0, 0, Math.sin(rad / 2), Math.cos(rad / 2)];

describe.each(SOLVERS)('share by the %s', (_, solve) => {
  it.each<[string, NonNullable<BonePose['turn']>, number]>([
    ['80° (half is 40°: VRMC_node_constraint 1.0, Roll; check value C12)', { angles: [0, 0, 80] }, 40],
    ['180°', { angles: [0, 0, 180] }, 90],
    ['−180°', { angles: [0, 0, -180] }, 90],
    ['the half-turn written with −z', [0, 0, -1, 0], 90],
    ['a hair above −180°', aboutZ(-Math.PI + 5e-10), 90],
    ['a little above −180°', aboutZ(-Math.PI + 1e-6), -90],
    ['190°, which is −170°', { angles: [0, 0, 190] }, -85],
    ['−190°, which is 170°', { angles: [0, 0, -190] }, 85],
  ])('halves a twist of %s', (_says, turn, expected) => {
    const result = solve(sharing(0.5), posed({ paw: { turn } }));
    expectClose(column(result, 'helper', 'x'), twisted(expected), 1e-6);
    expect(flagsOf(result)).toEqual([]);
  });

  it.each([
    [2, 1, 240],
    [-2, 1, -240],
    [1, 0.25, 30],
    [-0.5, 0.5, -30],
  ])('turns by fraction %f at weight %f', (fraction, weight, expected) => {
    const result = solve(sharing(fraction, weight), posed({ paw: { turn: { angles: [0, 0, 120] } } }));
    expectClose(column(result, 'helper', 'x'), twisted(expected), EXACT);
  });

  it('takes no swing for twist', () => {
    const result = solve(sharing(1), posed({ paw: { turn: { angles: [70, 0, 0] } } }));
    expectClose(columns(result, 'helper'), [1, 0, 0, 0, 1, 0, 0, 0, 1], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('does not turn where the source is swung by half a turn', () => {
    const result = solve(sharing(1), posed({ paw: { turn: { angles: [180, 0, 0] } } }));
    expectClose(columns(result, 'helper'), [1, 0, 0, 0, 1, 0, 0, 0, 1], EXACT);
    expect(flagsOf(result)).toEqual(['twist-undefined helper.roll']);
  });

  it('reads the twist of a mirrored or shrunken source from its orientation', () => {
    const mirrored = solve(sharing(1), posed({ paw: { turn: { angles: [0, 0, 50] }, size: [-1, 2, 0.5] } }));
    expectClose(column(mirrored, 'helper', 'x'), twisted(50), EXACT);
  });

  it('flags a source frame of no size, which it divides by, and not the source itself', () => {
    const flatFrame = solve(sharing(1), posed({ foreleg: { size: [1, 1, 0] } }));
    expect(flagsOf(flatFrame)).toContain('flat helper.roll');
    const flatSource = solve(sharing(1), posed({ paw: { size: [1, 1, 0] } }));
    expect(flagsOf(flatSource)).toEqual([]);
  });
});
