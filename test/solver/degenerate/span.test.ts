/** Span at its bounds, under sized parents and where it is undefined. Hand-worked unless a source is named. */
import { describe, expect, it } from 'vitest';
import type { SpanLink, Vec3 } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { bone, column, columns, flagsOf, posed, QUARTER, rigOf, SOLVERS, tipOf } from './build.ts';

const EXACT = 1e-12;

/** A bellows between a crane's post and a hook. */
const spanning = (hook: Vec3, link: Partial<SpanLink> = {}) =>
  rigOf([
    bone('hook', { at: hook }),
    bone('crane'),
    bone('bellows', {
      parent: 'crane',
      links: [{ name: 'stretch', kind: 'span', target: { bone: 'hook' }, ...link }],
    }),
  ]);

describe.each(SOLVERS)('span by the %s', (_, solve) => {
  it('is unchanged with its target on its base', () => {
    const result = solve(spanning([0, 0, 0]), posed({ bellows: { size: [2, 3, 4] } }));
    expectClose(columns(result, 'bellows'), [2, 0, 0, 0, 3, 0, 0, 0, 4], EXACT);
    expect(flagsOf(result)).toEqual(['aim-undefined bellows.stretch']);
  });

  it('is unchanged and flat under a parent of no size', () => {
    const result = solve(spanning([1, 0, 0]), posed({ crane: { size: [1, 0, 1] } }));
    expectClose(columns(result, 'bellows'), [1, 0, 0, 0, 0, 0, 0, 0, 1], EXACT);
    expect(flagsOf(result)).toEqual(['flat bellows.stretch']);
  });

  it('raises both where both hold', () => {
    const result = solve(spanning([0, 0, 0]), posed({ crane: { size: [0, 0, 0] } }));
    expect(flagsOf(result)).toEqual(['flat bellows.stretch', 'aim-undefined bellows.stretch']);
  });

  it('puts its tip on the target whatever size it and its parent had', () => {
    const result = solve(spanning([1, 2, 2]), posed({ crane: { size: [1, 4, 2] }, bellows: { size: [5, -1, 0.1] } }));
    expectClose(tipOf(result, 'bellows'), [1, 2, 2], EXACT);
    expect(Math.hypot(...column(result, 'bellows', 'x'))).toBeCloseTo(2, 12);
    expect(Math.hypot(...column(result, 'bellows', 'y'))).toBeCloseTo(2, 12);
    expect(flagsOf(result)).toEqual([]);
  });

  it('takes the size of a mirrored parent as positive', () => {
    const result = solve(spanning([0, 0, 3]), posed({ crane: { size: [-2, 2, 2] } }));
    // orient(A) has x = y×z, so the negative size is replaced and x points to +x.
    expectClose(columns(result, 'bellows'), [2, 0, 0, 0, 2, 0, 0, 0, 6], EXACT);
  });

  it('turns about +x when the target lies straight behind, half-way at half weight', () => {
    const result = solve(spanning([0, 0, -1], { weight: 0.5 }));
    expectClose(column(result, 'bellows', 'z'), [0, -1.5, 0], EXACT);
    expectClose(column(result, 'bellows', 'y'), [0, 0, 1], EXACT);
  });

  it.each<[string, Partial<SpanLink>, number, number, number]>([
    ['within its bounds', {}, 1, 1, 2],
    ['at most', { most: 1.5 }, 1, 1, 1.5],
    ['at least', { least: 4 }, 1, 1, 4],
    ['with volume kept', { sides: 'volume' }, 1, Math.sqrt(0.5), 2],
    ['with volume kept, from the bounded ratio', { sides: 'volume', most: 1.21 }, 1, 1 / 1.1, 1.21],
    ['with a rest length of its own', { restLength: 0.25, sides: 'volume' }, 1, 0.5, 2],
    ['with a rest length and a bound', { restLength: 0.25, most: 2 }, 1, 1, 1],
  ])('sizes %s (sides 1/√r: incompressible extension; check value G6)', (_says, link, distance, sides, along) => {
    const result = solve(spanning([0, 0, distance], link));
    expectClose(columns(result, 'bellows'), [sides, 0, 0, 0, sides, 0, 0, 0, along], EXACT);
  });

  it('blends size straight and turn by slerp', () => {
    const result = solve(spanning([2, 0, 0], { weight: 0.5, sides: 'volume' }));
    const half = Math.sqrt(0.5);
    const [sides, along] = [0.75, 2.5];
    expectClose(
      columns(result, 'bellows'),
      [half * sides, 0, -half * sides, 0, sides, 0, half * along, 0, half * along],
      EXACT,
    );
  });

  it('measures against what its bone takes of the parent: nothing for turn, ∛det for uniform', () => {
    const rig = (inherits: 'turn' | 'uniform') => {
      const { bones, ...rest } = spanning([0, 0, 4], { sides: 'volume' });
      return { ...rest, bones: bones.map((b) => (b.name === 'bellows' ? { ...b, inherits } : b)) };
    };
    const pose = posed({ crane: { size: [1, 4, 2], turn: QUARTER.z } });
    const free = solve(rig('turn'), pose);
    expect(Math.hypot(...column(free, 'bellows', 'x'))).toBeCloseTo(1 / Math.sqrt(8), 12);
    const uniform = solve(rig('uniform'), pose);
    expect(Math.hypot(...column(uniform, 'bellows', 'x'))).toBeCloseTo(1, 12);
    expectClose(tipOf(free, 'bellows'), [0, 0, 4], EXACT);
    expectClose(tipOf(uniform, 'bellows'), [0, 0, 4], EXACT);
  });
});
