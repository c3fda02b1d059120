import { QUATERNION } from '../machine/layout.ts';
import { atan2 } from '../number/index.ts';
import { quaternionOfMatrix } from './quaternion.ts';

/** Where both parts of a quaternion that give a twist are under this, there is none. */
export const TWIST_LEAST = 1e-9;
/** An angle this close to −180° counts as +180°. */
const HALF_TURN_RAD = Math.PI - 1e-9;

/** The angle, with what lies within 1e-9 rad of −180° counted as 180°. */
export const towardPlus = (angleRad: number): number => (angleRad <= -HALF_TURN_RAD ? Math.PI : angleRad);

/**
 * Twist of the rotation matrix at `turn` about its own x, y or z (0, 1, 2): 2·atan2(q[axis], q.w), in −π < … ≤ π.
 * NaN where both are under `least`: the axis is turned right over.
 */
export function twistRad(m: Float64Array, turn: number, axis: number, least: number): number {
  const j = (axis + 1) % 3;
  const k = (axis + 2) % 3;
  // q.w² + q[axis]² is (1 + that diagonal)/2. While it is large, the double angle comes straight from the matrix.
  if (m[turn + 4 * axis] > -0.5) {
    const sine = m[turn + 3 * j + k] - m[turn + 3 * k + j];
    return towardPlus(atan2(sine, m[turn + 4 * j] + m[turn + 4 * k]));
  }
  quaternionOfMatrix(m, turn, QUATERNION);
  const part = m[QUATERNION + axis];
  const w = m[QUATERNION + 3];
  if (Math.abs(part) < least && Math.abs(w) < least) return Number.NaN;
  return towardPlus(2 * atan2(part, w));
}
