/**
 * The solver against the oracle, a second reading of the same text, over rigs and poses by seed: every matrix within
 * 1e-9 of the rig's size, every weight, and the same flags in the same order. Left out, and counted, is what rounding
 * decides: see test/oracle/README.md and compared(). COUNTERPOSE_FUZZ sets how many rigs are tried.
 */
import { describe, expect, it } from 'vitest';
import type { Pose, Rig } from '../../src/solver/document/rig.ts';
import { FLAGS } from '../../src/solver/index.ts';
import { compared } from '../oracle/compare.ts';
import { oracleCycle } from '../oracle/cycle.ts';
import { programOf, solved } from '../oracle/subject.ts';
import { seeded } from '../support/random.ts';
import { randomPose, randomRig } from '../support/rigs.ts';
import { drawPose } from './corpus/drawPose.ts';
import { drawRig } from './corpus/drawRig.ts';

const RIGS = Number(process.env.COUNTERPOSE_FUZZ ?? 700);
const POSES = 3;

interface Trial {
  rig: Rig;
  poses: Pose[];
}

interface Tally {
  tried: number;
  /** How many were ill-conditioned, by what. */
  leftOut: Map<string, number>;
  flags: Set<string>;
  kinds: Set<string>;
}

function tryAll(trialOf: (seed: number) => Trial): Tally {
  const tally: Tally = { tried: 0, leftOut: new Map(), flags: new Set(), kinds: new Set() };
  for (let seed = 0; seed < RIGS; seed++) {
    const { rig, poses } = trialOf(seed);
    if (!oracleCycle(rig)) tryOne(rig, poses, seed, tally);
  }
  return tally;
}

function tryOne(rig: Rig, poses: readonly Pose[], seed: number, tally: Tally): void {
  const program = programOf(rig);
  for (const link of rig.bones.flatMap(({ links }) => links ?? [])) tally.kinds.add(link.kind);
  poses.forEach((pose, i) => {
    const result = solved(program, pose);
    const verdict = compared(rig, pose, result);
    tally.tried++;
    for (const { flag } of result.flags) tally.flags.add(flag);
    if (verdict.is === 'differs') expect.fail(`seed ${seed}, pose ${i}: ${verdict.how}`);
    if (verdict.is === 'ill-conditioned') tally.leftOut.set(verdict.by, (tally.leftOut.get(verdict.by) ?? 0) + 1);
  });
}

const leftOutShare = ({ leftOut, tried }: Tally): number => [...leftOut.values()].reduce((a, b) => a + b, 0) / tried;

const report = ({ tried, leftOut }: Tally): void => {
  if (process.env.COUNTERPOSE_FUZZ) console.info(`${tried} tried, left out: ${JSON.stringify([...leftOut])}`);
};

describe('the solver and the oracle agree', { timeout: 3_600_000 }, () => {
  it('on rigs and poses full of coincidences', () => {
    const tally = tryAll((seed) => {
      const rig = drawRig(seed, { anyReader: seed % 3 === 0 });
      return { rig, poses: Array.from({ length: POSES }, (_, i) => drawPose(rig, seed * 10 + i)) };
    });
    report(tally);
    expect([...tally.kinds].sort()).toEqual(['aim', 'follow', 'limit', 'reach', 'share', 'span']);
    expect([...tally.flags].sort()).toEqual([...FLAGS].sort());
    // One pose in ten has bones without a size.
    expect(leftOutShare(tally)).toBeLessThan(0.03);
  });

  it('on rigs and poses as they come, odd names among them', () => {
    const tally = tryAll((seed) => {
      const random = seeded(seed);
      const rig = randomRig(random, { oddNames: seed % 5 === 0 });
      return { rig, poses: Array.from({ length: POSES }, () => randomPose(random, rig)) };
    });
    report(tally);
    expect(leftOutShare(tally)).toBeLessThan(0.002);
  });

  it('and would not, were one number of the result or one flag another', () => {
    const rig = drawRig(7, { round: 0 });
    const pose = drawPose(rig, 70, 0);
    const result = solved(programOf(rig), pose);
    expect(compared(rig, pose, result)).toEqual({ is: 'agrees' });
    const name = rig.bones[0].name;
    const matrix = result.bones[name].matrix.map((x, i) => (i === 13 ? x + 1e-7 : x));
    expect(compared(rig, pose, { ...result, bones: { ...result.bones, [name]: { matrix } } }).is).toBe('differs');
    const flags = [...result.flags, { flag: 'flat', bone: name, link: 'none' } as const];
    expect(compared(rig, pose, { ...result, flags }).is).toBe('differs');
  });
});
