import { arcsineKernel } from './arcsineKernel.ts';

const HALF_PI_HIGH = 1.5707963267948966;
const HALF_PI_LOW = 6.123233995736766e-17;

/**
 * Angle in radians, 0..π, whose cosine this is, within 1 ulp; NaN outside −1..1.
 * Near ±1 by acos x = 2 asin √((1 − x)/2), where 1 − x is exact.
 */
export function acos(cosine: number): number {
  if (Math.abs(cosine) < 0.5) {
    const bend = cosine * arcsineKernel(cosine * cosine);
    return HALF_PI_HIGH - (cosine - (HALF_PI_LOW - bend));
  }
  if (cosine < 0) return nearHalfTurn(0.5 * (1 + cosine));
  return cosine === 1 ? 0 : nearZero(0.5 * (1 - cosine));
}

/** π − 2 asin √z. */
function nearHalfTurn(z: number): number {
  const root = Math.sqrt(z);
  const high = HALF_PI_HIGH - root;
  const lost = HALF_PI_HIGH - high - root;
  return 2 * (high + (lost + (HALF_PI_LOW - root * arcsineKernel(z))));
}

/** 2 asin √z, z > 0. The root is kept in two parts: 24 bits, and from the exact remainder the rest. */
function nearZero(z: number): number {
  const root = Math.sqrt(z);
  const high = Math.fround(root);
  const low = (z - high * high) / (root + high);
  return 2 * (high + (low + root * arcsineKernel(z)));
}
