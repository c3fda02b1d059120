/** At weight 1 a link meets what it asks for, whatever bone and pose it finds. */
import fc from 'fast-check';
import { test } from 'vitest';
import type { Bone, Link, Rig, SolveResult } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { between, pick, type Random, seeded, unitQuaternion } from '../../support/random.ts';
import { baseOf, bone, column, columns, rigOf, tipOf } from '../degenerate/build.ts';
import { solveRig } from '../solveRig.ts';

const spot = (random: Random) => [between(random, -1, 1), between(random, -1, 1), between(random, -1, 1)] as const;

/** A quay that is turned and sized evenly, and on it what the link asks for and the bone that has it. */
function onQuay(random: Random, link: Link, others: readonly string[]): Rig {
  const child = (name: string, links: readonly Link[] = []): Bone =>
    bone(name, { parent: 'quay', at: spot(random), turned: unitQuaternion(random), links });
  return rigOf([bone('quay'), ...others.map((name) => child(name)), child('vane', [link])]);
}

function eachSolved(link: (random: Random) => Link, check: (result: SolveResult, link: Link) => void): void {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 30 }), (seed) => {
      const random = seeded(seed);
      const own = link(random);
      const rig = onQuay(random, own, ['kite', 'flag']);
      const size = between(random, 0.5, 2);
      const pose = { bones: { quay: { turn: unitQuaternion(random), size: [size, size, size] } } } as const;
      check(solveRig(rig, pose), own);
    }),
    { numRuns: 300, seed: 8 },
  );
}

const way = (from: readonly number[], to: readonly number[]) => {
  const v = to.map((x, i) => x - from[i]);
  const length = Math.hypot(...v);
  return v.map((x) => x / length);
};
const unitOf = (v: readonly number[]) => way([0, 0, 0], v);

test('aim points its axis at the target', () => {
  eachSolved(
    (random) => ({ name: 'watch', kind: 'aim', target: { bone: 'kite' }, axis: pick(random, ['+x', '+y', '+z']) }),
    (result, link) => {
      const axis = unitOf(column(result, 'vane', (link as { axis: string }).axis[1] as 'x' | 'y' | 'z'));
      expectClose(axis, way(baseOf(result, 'vane'), baseOf(result, 'kite')), 1e-14);
    },
  );
});

test('with an up point, the up axis lies in the plane of aim and up', () => {
  eachSolved(
    () => ({ name: 'watch', kind: 'aim', target: { bone: 'kite' }, up: { axis: '+y', toward: { bone: 'flag' } } }),
    (result) => {
      const side = column(result, 'vane', 'x');
      const toFlag = way(baseOf(result, 'vane'), baseOf(result, 'flag'));
      expectClose(
        side.reduce((sum, x, i) => sum + x * toFlag[i], 0),
        0,
        1e-14,
      );
    },
  );
});

test('span lands its tip on the target', () => {
  eachSolved(
    (random) => ({ name: 'rod', kind: 'span', target: { bone: 'kite' }, sides: pick(random, ['free', 'volume']) }),
    (result) => expectClose(tipOf(result, 'vane'), baseOf(result, 'kite'), 1e-14),
  );
});

test('follow takes over the source', () => {
  eachSolved(
    () => ({ name: 'tie', kind: 'follow', source: 'kite' }),
    (result) => {
      expectClose(baseOf(result, 'vane'), baseOf(result, 'kite'), 0);
      expectClose(columns(result, 'vane'), columns(result, 'kite'), 1e-14);
    },
  );
});
