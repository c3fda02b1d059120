import { quarterSine } from './quarterSine.ts';
import { sineKernel } from './sineKernel.ts';

const EIGHTH_TURN = 0.7853981633974483;
/** 2^−27. Below this sin x rounds to x, and −0 stays −0. */
const SMALL = 7.450580596923828e-9;

/** Sine of an angle in radians, within 1 ulp for |angleRad| ≤ 1.647e6 (beyond: see quarterSine); NaN if not finite. */
export function sin(angleRad: number): number {
  const size = Math.abs(angleRad);
  if (size < SMALL) return angleRad;
  return size <= EIGHTH_TURN ? sineKernel(angleRad, 0) : quarterSine(angleRad, 0);
}
