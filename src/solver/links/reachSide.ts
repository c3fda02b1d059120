import { orient } from '../geometry/orient.ts';
import { writeDirection } from '../geometry/point.ts';
import { cross, perpendicular, unitise, ZERO } from '../geometry/vector.ts';
import { DIRECTION, HINGE, LOWER, ORIENTATION, SIDE, UPPER, VECTOR } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';

/** Sines under this give no hinge, and no side from a hinge. */
const BEND_LEAST = 1e-6;
/** sin of 1e-6 rad: a pole this close to the line to the target gives no side. */
const POLE_LEAST = 9.999999999998333e-7;

/**
 * Writes the hinge, a unit vector across UPPER, to HINGE: across both bones, or where they lie in one line along the
 * upper's +x, or its +y where +x lies along the bone.
 */
export function writeHinge(m: Float64Array, upper: number): void {
  cross(m, UPPER, LOWER, HINGE);
  if (unitise(m, HINGE, BEND_LEAST) >= BEND_LEAST) return;
  orient(m, upper, ORIENTATION);
  if (perpendicular(m, ORIENTATION, UPPER, HINGE, ZERO) >= ZERO) return;
  perpendicular(m, ORIENTATION + 3, UPPER, HINGE, ZERO);
}

/** Writes the side of the elbow from the pole at `pole` of the code to SIDE; returns false if it gives none. */
export const writePoleSide = (machine: Machine, upper: number, pole: number): boolean =>
  poleSine(machine, upper, pole) >= POLE_LEAST;

/** The sine of the angle between pole and target as seen from the upper base; 0 for a pole at that base. */
export function poleSine({ code, memory: m }: Machine, upper: number, pole: number): number {
  if (writeDirection(code, m, upper, pole, VECTOR) < ZERO) return 0;
  return perpendicular(m, VECTOR, DIRECTION, SIDE, POLE_LEAST);
}

/** Writes the side of the elbow without a pole to SIDE: the one it bends to already. */
export function writeOwnSide(m: Float64Array): void {
  cross(m, DIRECTION, HINGE, SIDE);
  if (unitise(m, SIDE, BEND_LEAST) >= BEND_LEAST) return;
  perpendicular(m, UPPER, DIRECTION, SIDE, 0);
}
