import { orient } from '../geometry/orient.ts';
import { writeDirection } from '../geometry/point.ts';
import { cross, perpendicular, unitise } from '../geometry/vector.ts';
import { LIMB } from './limb.ts';

const { UPPER, LOWER, DIRECTION, HINGE, SIDE, SPARE } = LIMB;

/** Sines under this give no hinge, and no side from a hinge. */
const BEND_LEAST = 1e-6;
/** sin of 1e-6 rad: a pole this close to the line to the target gives no side. */
const POLE_LEAST = 9.999999999998333e-7;
/** Under this, the upper's +x lies along the bone. */
const ZERO = 1e-9;

/**
 * Writes the hinge, a unit vector across the upper bone: across both bones, or where they lie in one line along the
 * upper's +x, or its +y where +x lies along the bone.
 */
export function writeHinge(m: Float64Array, upper: number): void {
  cross(m, UPPER, LOWER, HINGE);
  if (unitise(m, HINGE, BEND_LEAST) >= BEND_LEAST) return;
  orient(m, upper, SPARE);
  if (perpendicular(m, SPARE, UPPER, HINGE, ZERO) >= ZERO) return;
  perpendicular(m, SPARE + 3, UPPER, HINGE, ZERO);
}

/** Writes the side of the elbow from the pole at `pole` of the code; returns false if it gives none. */
export const writePoleSide = (code: Int32Array, m: Float64Array, upper: number, pole: number): boolean =>
  poleSine(code, m, upper, pole) >= POLE_LEAST;

/** The sine of the angle between pole and target as seen from the upper base; 0 for a pole at that base. */
export function poleSine(code: Int32Array, m: Float64Array, upper: number, pole: number): number {
  if (!writeDirection(code, m, upper, pole, SPARE)) return 0;
  return perpendicular(m, SPARE, DIRECTION, SIDE, POLE_LEAST);
}

/** Writes the side of the elbow without a pole: the one it bends to already. */
export function writeOwnSide(m: Float64Array): void {
  cross(m, DIRECTION, HINGE, SIDE);
  if (unitise(m, SIDE, BEND_LEAST) >= BEND_LEAST) return;
  perpendicular(m, UPPER, DIRECTION, SIDE, 0);
}
