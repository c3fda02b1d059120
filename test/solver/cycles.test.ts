/** Cycles: found exactly where the oracle finds one, and told as a walk that the document bears out. */
import { describe, expect, it } from 'vitest';
import type { Link, Rig } from '../../src/solver/document/rig.ts';
import { compile } from '../../src/solver/index.ts';
import { oracleCycle } from '../oracle/cycle.ts';
import { accepted } from '../oracle/subject.ts';
import { isCycle } from '../oracle/walk.ts';
import { seeded } from '../support/random.ts';
import { randomRig } from '../support/rigs.ts';
import { drawRig } from './corpus/drawRig.ts';
import { bone, rigOf } from './degenerate/build.ts';

const RIGS = Number(process.env.COUNTERPOSE_FUZZ ?? 2000);

/** What is wrong with the way compile takes this rig, if anything. */
function fault(rig: Rig): string | undefined {
  const compiled = compile(rig);
  const cyclic = oracleCycle(rig);
  if (compiled.ok) return cyclic ? 'a cycle was missed' : undefined;
  if (!cyclic) return `no cycle, but told: ${compiled.cycle.join(' → ')}`;
  return isCycle(rig, compiled.cycle) ? undefined : `not a cycle: ${compiled.cycle.join(' → ')}`;
}

function cyclesIn(rigs: (seed: number) => Rig): number {
  let cyclic = 0;
  for (let seed = 0; seed < RIGS; seed++) {
    const rig = accepted(rigs(seed));
    expect(fault(rig), `seed ${seed}`).toBeUndefined();
    if (oracleCycle(rig)) cyclic++;
  }
  return cyclic;
}

describe('cycles', { timeout: 600_000 }, () => {
  it('are found in drawn rigs exactly where they are', () => {
    const cyclic = cyclesIn((seed) => drawRig(seed, { anyReader: seed % 2 === 0 }));
    expect(cyclic).toBeGreaterThan(RIGS / 5);
    expect(cyclic).toBeLessThan((RIGS * 4) / 5);
  });

  it('are found in random rigs exactly where they are', () => {
    expect(cyclesIn((seed) => randomRig(seeded(seed), { cycles: seed % 2 === 0 }))).toBeGreaterThan(RIGS / 10);
  });

  it('are not taken on trust: a walk that is none is refused', () => {
    const rig = accepted(drawRig(0, { anyReader: true }));
    const compiled = compile(rig);
    if (compiled.ok) return expect.fail('the first drawn rig has a cycle');
    expect(isCycle(rig, compiled.cycle)).toBe(true);
    expect(isCycle(rig, [...compiled.cycle].reverse())).toBe(false);
    expect(isCycle(rig, compiled.cycle.slice(0, -1))).toBe(false);
  });

  const aim = (name: string, target: string, more: Partial<Link> = {}) =>
    ({ name, kind: 'aim', target: { bone: target }, ...more }) as Link;
  const limb = (lower: readonly Link[], others: Parameters<typeof rigOf>[0] = []) =>
    rigOf([bone('load'), bone('boom'), bone('jib', { parent: 'boom', at: [0, 0, 0.5], links: lower }), ...others]);
  const lift = { name: 'lift', kind: 'reach', target: { bone: 'load' } } as const;

  it.each<[string, boolean, Rig]>([
    ['a bone that aims at itself', true, rigOf([bone('toad', { links: [aim('look', 'toad')] })])],
    ['a link of weight 0', true, rigOf([bone('toad', { links: [aim('look', 'toad', { weight: 0 })] })])],
    [
      'a bone that aims at its parent',
      false,
      rigOf([bone('otter'), bone('toad', { parent: 'otter', links: [aim('look', 'otter')] })]),
    ],
    [
      'a bone that aims at its child',
      true,
      rigOf([bone('otter', { links: [aim('look', 'toad')] }), bone('toad', { parent: 'otter' })]),
    ],
    ['a bone that is its own parent', true, rigOf([bone('otter', { parent: 'otter' })])],
    [
      'a reach for a child of its upper',
      true,
      limb([{ ...lift, target: { bone: 'lamp' } }], [bone('lamp', { parent: 'boom' })]),
    ],
    ['a reach for its upper', true, limb([{ ...lift, target: { bone: 'boom' } }])],
    ['a pole on the lower', true, limb([{ ...lift, pole: { bone: 'jib' } }])],
    ['an upper read by the lower before the reach', true, limb([aim('look', 'boom'), lift])],
    ['an upper read by the lower after the reach', false, limb([lift, aim('look', 'boom')])],
    [
      'a child of the upper read by the lower before the reach',
      true,
      limb([aim('look', 'lamp'), lift], [bone('lamp', { parent: 'boom' })]),
    ],
    [
      'a child of the upper read by the lower after the reach',
      false,
      limb([lift, aim('look', 'lamp')], [bone('lamp', { parent: 'boom' })]),
    ],
    ['a limit before the reach', false, limb([{ name: 'keep', kind: 'limit', cone: 10 }, lift])],
  ])('%s: %s', (_says, cyclic, rig) => {
    expect(oracleCycle(rig)).toBe(cyclic);
    expect(compile(accepted(rig)).ok).toBe(!cyclic);
    expect(fault(accepted(rig))).toBeUndefined();
  });

  const driven = (
    rig: Rig,
    from: NonNullable<Rig['drivers']>[number]['inputs'][number]['from'],
    output: NonNullable<Rig['drivers']>[number]['output'],
  ): Rig => ({
    ...rig,
    drivers: [
      {
        name: 'cue',
        inputs: [{ from }],
        map: {
          keys: [
            [0, 0],
            [1, 1],
          ],
        },
        output,
      },
    ],
  });
  const lever = { name: 'lever', min: 0, max: 1, default: 0 };
  const pair = rigOf([bone('otter', { switches: [lever] }), bone('toad', { links: [aim('look', 'otter')] })]);

  it.each<[string, boolean, Rig]>([
    [
      'a weight driven by a switch',
      false,
      driven(pair, { switch: 'otter.lever' }, { bone: 'toad', link: 'look', field: 'weight' }),
    ],
    [
      'a weight driven by its own bone',
      true,
      driven(pair, { turn: { bone: 'toad', axis: 'x' } }, { bone: 'toad', link: 'look', field: 'weight' }),
    ],
    ['a switch driven by itself', true, driven(pair, { switch: 'otter.lever' }, { switch: 'otter.lever' })],
    [
      'a switch driven by its owner',
      false,
      driven(pair, { shift: { bone: 'otter', axis: 'x' } }, { switch: 'otter.lever' }),
    ],
    [
      'a move driven by a bone that reads it',
      true,
      driven(pair, { gap: [{ bone: 'toad' }, { bone: 'toad' }] }, { bone: 'otter', channel: 'move.x' }),
    ],
    [
      'a move driven by a bone that it reads',
      false,
      driven(pair, { shift: { bone: 'otter', axis: 'x' } }, { bone: 'toad', channel: 'move.x' }),
    ],
    [
      'a reach weighed by its upper',
      true,
      driven(limb([lift]), { turn: { bone: 'boom', axis: 'x' } }, { bone: 'jib', link: 'lift', field: 'weight' }),
    ],
  ])('%s: %s', (_says, cyclic, rig) => {
    expect(oracleCycle(rig)).toBe(cyclic);
    expect(fault(accepted(rig))).toBeUndefined();
  });
});
