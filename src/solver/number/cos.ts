import { cosineKernel } from './cosineKernel.ts';
import { quarterSine } from './quarterSine.ts';

const EIGHTH_TURN = 0.7853981633974483;

/** Cosine of an angle in radians, within 1 ulp for |angleRad| ≤ 1.647e6 (beyond: see quarterSine); NaN if not finite. */
export function cos(angleRad: number): number {
  return Math.abs(angleRad) <= EIGHTH_TURN ? cosineKernel(angleRad, 0) : quarterSine(angleRad, 1);
}
