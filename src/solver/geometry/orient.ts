import { writeIdentity } from './matrix.ts';
import { copyVector, cross, perpendicular, unitise, ZERO } from './vector.ts';

/**
 * Writes orient(A) of the 3×3 part at `from` to `to`: z along the third column, y along the second made
 * perpendicular to it, x = y × z. Returns whether a length counted as zero.
 */
export function orient(m: Float64Array, from: number, to: number): boolean {
  const x = to;
  const y = to + 3;
  const z = to + 6;
  copyVector(m, from + 6, z);
  if (unitise(m, z, ZERO) < ZERO) return orientFlat(m, from, to);
  if (perpendicular(m, from + 3, z, y, ZERO) < ZERO) return orientFlat(m, from, to);
  cross(m, y, z, x);
  return false;
}

/** Some length counts as zero: z and y have one stand-in each, and after those the whole is the identity. */
function orientFlat(m: Float64Array, from: number, to: number): true {
  const z = to + 6;
  copyVector(m, from + 6, z);
  if (unitise(m, z, ZERO) < ZERO) {
    cross(m, from, from + 3, z);
    if (unitise(m, z, ZERO) < ZERO) return identity(m, to);
  }
  const y = to + 3;
  if (perpendicular(m, from + 3, z, y, ZERO) < ZERO) {
    cross(m, z, from, y);
    if (unitise(m, y, ZERO) < ZERO) return identity(m, to);
  }
  cross(m, y, z, to);
  return true;
}

function identity(m: Float64Array, to: number): true {
  writeIdentity(m, to);
  return true;
}
