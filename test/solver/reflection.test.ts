/**
 * A reflected pose on a reflected rig gives, by the oracle, the reflection of what the solver makes of the rig. The rigs have no round turns, since the format
 * excepts exact half-turns and fallback axes.
 */
import { describe, expect, it } from 'vitest';
import type { Pose, Rig, Vec3 } from '../../src/solver/document/rig.ts';
import { reflect } from '../../src/solver/mirror/reflect.ts';
import { reflectPose } from '../../src/solver/mirror/reflectPose.ts';
import { swapSide } from '../../src/solver/mirror/sides.ts';
import type { SolveResult } from '../../src/solver/program.ts';
import { compared } from '../oracle/compare.ts';
import { oracleCycle } from '../oracle/cycle.ts';
import { programOf, solved } from '../oracle/subject.ts';
import { drawPose } from './corpus/drawPose.ts';
import { drawRig } from './corpus/drawRig.ts';

const RIGS = Number(process.env.COUNTERPOSE_FUZZ ?? 1500);

/** +y, +z and the base across x = 0, +x opposite to its reflection. */
function reflectedMatrix(m: readonly number[]): number[] {
  const across = (i: number) => [-m[i], m[i + 1], m[i + 2]];
  return [...across(0).map((c) => -c), 0, ...across(4), 0, ...across(8), 0, ...across(12), 1];
}

/** A pose in which no bone is without a size or left to turn about one of its axes alone. */
function freelyTurned(rig: Rig, seed: number): Pose {
  const { bones, ...rest } = drawPose(rig, seed, 0);
  const turned = rig.bones.map(({ name }, i) => {
    const angles: Vec3 = [31 + seed / 97 + 41 * i, 17 - 23 * i, seed / 89 - 53 * i];
    const drawn = bones?.[name];
    const size = drawn?.size?.map((along) => along || 0.75) as unknown as Vec3;
    return [name, { turn: { angles }, ...drawn, ...(size && { size }) }] as const;
  });
  return { ...rest, bones: Object.fromEntries(turned) };
}

/** Flags stay in the order of the document, which the reflected rig keeps. */
function reflectedResult({ bones, weights, flags }: SolveResult): SolveResult {
  const byOtherSide = ([name, { matrix }]: [string, { matrix: number[] }]) =>
    [swapSide(name), { matrix: reflectedMatrix(matrix) }] as const;
  const weightByOtherSide = ([name, weight]: [string, number]) => {
    const [bone, link] = name.split('.');
    return [`${swapSide(bone)}.${link}`, weight] as const;
  };
  return {
    bones: Object.fromEntries(Object.entries(bones).map(byOtherSide)),
    weights: Object.fromEntries(Object.entries(weights).map(weightByOtherSide)),
    flags: flags.map((flag) => ({ ...flag, bone: swapSide(flag.bone) })),
  };
}

describe('reflection', () => {
  it('commutes with solving', { timeout: 600_000 }, () => {
    let wavering = 0;
    const differing: string[] = [];
    for (let seed = 0; seed < RIGS; seed++) {
      const rig = drawRig(seed, { round: 0, anyReader: seed % 3 === 0 });
      if (oracleCycle(rig)) continue;
      const pose = freelyTurned(rig, seed);
      const verdict = compared(reflect(rig), reflectPose(pose), reflectedResult(solved(programOf(rig), pose)));
      if (verdict.is === 'differs') differing.push(`seed ${seed}: ${verdict.how}`);
      if (verdict.is === 'ill-conditioned') wavering++;
    }
    // About one rig in 20 000 aims a bone away from what it was aimed at before: an exact half-turn by its build.
    expect(differing.slice(Math.floor(RIGS / 10_000))).toEqual([]);
    expect(wavering).toBeLessThan(RIGS / 100);
  });
});
