import { atan2 } from '../number/index.ts';
import { makeUnit, quaternionOfTurn } from './quaternion.ts';
import { dot } from './vector.ts';

/** An angle this close to −180° counts as +180°. */
const HALF_TURN_RAD = Math.PI - 1e-9;

/** Where both parts of a quaternion that give a twist are under this, there is none. */
export const TWIST_LEAST = 1e-9;

/** The angle, with what lies within 1e-9 rad of −180° counted as 180°. */
export const towardPlus = (angleRad: number): number => (angleRad <= -HALF_TURN_RAD ? Math.PI : angleRad);

/**
 * Writes the twist about x, y or z (0, 1, 2) of the turn q from one orientation to another, as seen from the first:
 * 2·atan2(q[axis], q.w) radians, in −π < … ≤ π. Returns false where both are under `least`: the axis is turned right
 * over, and the twist 0. Uses four doubles from `to` on.
 */
export function writeTwist(
  m: Float64Array,
  from: number,
  full: number,
  axis: number,
  least: number,
  to: number,
): boolean {
  const i = 3 * axis;
  const j = axis === 2 ? 0 : i + 3;
  const k = axis === 0 ? 6 : i - 3;
  // q.w² + q[axis]² is half of 1 plus this cosine. While it is large, the double angle comes straight from the matrix.
  if (dot(m, from + i, full + i) > -0.5) {
    const sine = dot(m, from + k, full + j) - dot(m, from + j, full + k);
    m[to] = towardPlus(atan2(sine, dot(m, from + j, full + j) + dot(m, from + k, full + k)));
    return true;
  }
  quaternionOfTurn(m, from, full, to);
  makeUnit(m, to);
  const part = m[to + axis];
  const w = m[to + 3];
  const isDefined = Math.abs(part) >= least || Math.abs(w) >= least;
  m[to] = isDefined ? towardPlus(2 * atan2(part, w)) : 0;
  return isDefined;
}
