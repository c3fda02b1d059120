import { cosineKernel } from './cosineKernel.ts';
import { sineKernel } from './sineKernel.ts';

const TWO_OVER_PI = 0.6366197723675814;
const TWO_PI = 6.283185307179586;

/**
 * π/2 in pieces of 33 bits, so that a piece times a whole number up to 2^20 is exact; beside the second and third,
 * what is left of π/2 after them. Reduction in steps: W. J. Cody and W. Waite, Software Manual for the Elementary
 * Functions (1980), from memory.
 */
const PIECE_1 = 1.5707963267341256;
const PIECE_2 = 6.077100506303966e-11;
const AFTER_2 = 2.0222662487959506e-21;
const PIECE_3 = 2.0222662487111665e-21;
const AFTER_3 = 8.4784276603689e-32;

/** The largest angle the pieces serve, a little under 2^20 quarter turns. */
const LARGEST = 1_647_000;
/** 2^−30. A remainder smaller than this has lost so many leading bits that the third piece is needed. */
const TINY = 9.313225746154785e-10;
/** 1.5·2^52: adding and subtracting it rounds to a whole number. */
const ROUNDER = 6755399441055744;

/**
 * sin(angleRad + quarters · π/2), within 1 ulp for |angleRad| ≤ 1.647e6. Beyond, the angle first loses whole turns
 * of the double nearest 2π, which gives the sine of a number less than half an ulp away from angleRad.
 * Not finite: NaN.
 */
export function quarterSine(angleRad: number, quarters: number): number {
  const x = Math.abs(angleRad) <= LARGEST ? angleRad : angleRad % TWO_PI;
  const n = x * TWO_OVER_PI + ROUNDER - ROUNDER;
  const first = x - n * PIECE_1;
  const second = first - n * PIECE_2;
  let start = second;
  let rest = n * AFTER_2 - (first - second - n * PIECE_2);
  if (Math.abs(second) < TINY) {
    start = second - n * PIECE_3;
    rest = n * AFTER_3 - (second - start - n * PIECE_3);
  }
  const high = start - rest;
  const low = start - high - rest;
  const turn = (n + quarters) & 3;
  const value = turn & 1 ? cosineKernel(high, low) : sineKernel(high, low);
  return turn & 2 ? -value : value;
}
