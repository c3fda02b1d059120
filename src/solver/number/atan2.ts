import { arctangentKernel } from './arctangentKernel.ts';

const PI_HIGH = Math.PI;
const PI_LOW = 1.2246467991473532e-16;
const HALF_PI_HIGH = 1.5707963267948966;
const HALF_PI_LOW = 6.123233995736766e-17;
const ATAN_HALF_HIGH = 0.4636476090008061;
const ATAN_HALF_LOW = 2.2698777452961687e-17;
const ATAN_ONE_HIGH = 0.7853981633974483;
const ATAN_ONE_LOW = 3.061616997868383e-17;

/** From these ratios on, atan is taken about ½ and about 1; the kernel's argument stays within ±0.25. */
const NEAR_HALF = 0.25;
const NEAR_ONE = 0.71875;
/** 2^−28. A ratio below this is its own arctangent to the last bit. */
const SMALL = 3.725290298461914e-9;
/** 2^±100 bound what Math.fround can split; 2^±200 bring a pair within. */
const LARGE = 1.2676506002282294e30;
const LITTLE = 7.888609052210118e-31;
const ENLARGE = 1.6069380442589903e60;
const REDUCE = 6.223015277861142e-61;

/**
 * Angle in radians, −π..π, from the +x axis to the point (x, y), within 1 ulp. Zeros, signs of zero and infinities
 * as ECMA-262 has them; NaN if either is NaN.
 */
export function atan2(y: number, x: number): number {
  if (Number.isNaN(y) || Number.isNaN(x)) return Number.NaN;
  const up = Math.abs(y);
  const across = Math.abs(x);
  const back = x < 0 || Object.is(x, -0);
  const angleRad =
    up > across
      ? offsetArctangent(across, up, HALF_PI_HIGH, HALF_PI_LOW, back ? 1 : -1)
      : offsetArctangent(up, across, back ? PI_HIGH : 0, back ? PI_LOW : 0, back ? -1 : 1);
  return y < 0 || Object.is(y, -0) ? -angleRad : angleRad;
}

/** (startHigh + startLow) + sign · atan(small / big), 0 ≤ small ≤ big. */
function offsetArctangent(small: number, big: number, startHigh: number, startLow: number, sign: number): number {
  if (small < SMALL * big) return startHigh + (sign * (small / big) + startLow);
  if (small === big) return startHigh + sign * (small === 0 ? 0 : ATAN_ONE_HIGH);
  if (big > LARGE) return offsetArctangent(small * REDUCE, big * REDUCE, startHigh, startLow, sign);
  if (big < LITTLE) return offsetArctangent(small * ENLARGE, big * ENLARGE, startHigh, startLow, sign);
  if (small < NEAR_HALF * big) return turnedArctangent(small, big, 0, startHigh, startLow, sign);
  const nearOne = small >= NEAR_ONE * big;
  const aboutHigh = sign * (nearOne ? ATAN_ONE_HIGH : ATAN_HALF_HIGH);
  const aboutLow = sign * (nearOne ? ATAN_ONE_LOW : ATAN_HALF_LOW);
  const high = startHigh + aboutHigh;
  const low = aboutHigh - (high - startHigh) + (aboutLow + startLow);
  return turnedArctangent(small, big, nearOne ? 1 : 0.5, high, low, sign);
}

/**
 * (high + low) + sign · atan of the ratio seen from the direction of ratio c:
 * atan(small / big) − atan(c) = atan((small − c·big) / (big + c·small)).
 * For c = ½ and 1 the numerator is exact (P. H. Sterbenz, Floating-Point Computation, 1974, from memory). The quotient is
 * kept in two parts: 24 bits, and from the exact remainder the rest.
 */
function turnedArctangent(small: number, big: number, c: number, high: number, low: number, sign: number): number {
  const rise = small - c * big;
  const run = big + c * small;
  const runLost = c * small - (run - big);
  const runHigh = Math.fround(run);
  const perRun = 1 / run;
  const ratio = rise * perRun;
  const ratioHigh = Math.fround(ratio);
  const remainder = rise - ratioHigh * runHigh - ratioHigh * (run - runHigh) - ratioHigh * runLost;
  return high + (sign * ratioHigh + (low + sign * (remainder * perRun + arctangentKernel(ratio))));
}
