/** Holding another solver's result against the oracle's. */
import type { Pose, Rig } from '../../src/solver/document/rig.ts';
import type { SolveResult } from '../../src/solver/program.ts';
import { seeded } from '../support/random.ts';
import { Evaluation } from './evaluation.ts';
import { jittered } from './jitter.ts';
import { determinant } from './matrix.ts';
import { oracleSolve, resultOf } from './solve.ts';
import { size } from './vector.ts';
import type { World } from './world.ts';

/** Of the largest number in the result, or of 1 m where that is larger. */
export const TOLERANCE = 1e-9;
const NUDGES = 40;

export type Verdict =
  | { is: 'agrees' }
  /** Rounding decides, by a clause that leaves it open, by noise about a size of zero, or by what a nudge shows. */
  | { is: 'ill-conditioned'; by: 'open clause' | 'zero size' | 'nudge' }
  | { is: 'differs'; how: string };

/** Every matrix and weight within TOLERANCE and the same flags in the same order, or a place where the oracle itself wavers. */
export function compared(rig: Rig, pose: Pose, actual: SolveResult): Verdict {
  const evaluation = new Evaluation(rig, pose);
  const expected = resultOf(evaluation);
  const off = difference(expected, actual);
  const flagsDiffer = flagList(expected) !== flagList(actual);
  const allowed = TOLERANCE * scaleOf(expected);
  if (off.by <= allowed && !flagsDiffer) return { is: 'agrees' };
  if (evaluation.isUndecided) return { is: 'ill-conditioned', by: 'open clause' };
  if (evaluation.answers().some(isFlatButForNoise)) return { is: 'ill-conditioned', by: 'zero size' };

  const nudged = nudgedResults(rig, pose);
  const wavers = Math.max(...nudged.map((result) => difference(expected, result).by));
  // Where a number wavers by this much, what is flagged further on may waver too.
  const flagsWaver =
    wavers > 1e-6 * scaleOf(expected) || nudged.some((result) => flagList(result) !== flagList(expected));
  if (flagsDiffer && !flagsWaver) {
    return { is: 'differs', how: `flags ${flagList(actual)}, expected ${flagList(expected)}` };
  }
  if (off.by > allowed + 10 * wavers) return { is: 'differs', how: `${off.where} off by ${off.by}, nudged ${wavers}` };
  return { is: 'ill-conditioned', by: 'nudge' };
}

/**
 * A bone under one without size along an axis, or blended to such a size, has a determinant of 0 that rounding makes
 * about 1e-17, and ∛ of that is above 1e-9: whether g counts as nothing is then up to the noise. Likewise what is off
 * the diagonal of a matrix that is nothing but noise.
 */
function isFlatButForNoise(answer: unknown): boolean {
  if (typeof answer !== 'object' || answer === null || !('a' in answer)) return false;
  const { a } = answer as World;
  const sizes = [size(a.x), size(a.y), size(a.z)];
  const det = Math.abs(determinant(a));
  return sizes.some((along) => along > 0 && along < 1e-12) || (det > 0 && det < 1e-12 * Math.max(...sizes) ** 3);
}

function nudgedResults(rig: Rig, pose: Pose): SolveResult[] {
  const random = seeded(1);
  return Array.from({ length: NUDGES }, () => {
    const near = jittered(rig, pose, random);
    return oracleSolve(near.rig, near.pose);
  });
}

const flagList = ({ flags }: SolveResult): string =>
  JSON.stringify(flags.map(({ flag, bone, link }) => [flag, bone, link]));

/** Every number of a result with a word for where it stands, bones and links in order of their names. */
function numbers(result: SolveResult): [string, number][] {
  const matrices = Object.keys(result.bones)
    .sort()
    .flatMap((name) => result.bones[name].matrix.map((x, i): [string, number] => [`${name}[${i}]`, x]));
  const weights = Object.keys(result.weights)
    .sort()
    .map((name): [string, number] => [name, result.weights[name]]);
  return [...matrices, ...weights];
}

/** The largest difference; Infinity where the results do not hold the same finite numbers. */
export function difference(a: SolveResult, b: SolveResult): { by: number; where: string } {
  const [left, right] = [numbers(a), numbers(b)];
  let most = { by: 0, where: '' };
  if (left.length !== right.length) return { by: Number.POSITIVE_INFINITY, where: 'the list of bones or links' };
  left.forEach(([where, x], i) => {
    const by = right[i][0] === where ? Math.abs(x - right[i][1]) : Number.POSITIVE_INFINITY;
    if (!(by <= most.by)) most = { by: Number.isFinite(by) ? by : Number.POSITIVE_INFINITY, where };
  });
  return most;
}

export const scaleOf = (result: SolveResult): number =>
  numbers(result).reduce((largest, [, x]) => Math.max(largest, Math.abs(x)), 1);
