import { writeIdentity } from './matrix.ts';
import { copyVector, cross, perpendicular, unitise } from './vector.ts';

const INDEX = 0x3fffffff;
const ZERO = 1e-9;

/**
 * Writes orient(A) of the 3×3 part at `from` to `to`: z along the third column, y along the second made
 * perpendicular to it, x = y × z. Returns whether a length counted as zero.
 */
export function orient(m: Float64Array, from: number, to: number): boolean {
  const a = from & INDEX;
  const o = to & INDEX;
  let zx = m[a + 6];
  let zy = m[a + 7];
  let zz = m[a + 8];
  const zLength = Math.sqrt(zx * zx + zy * zy + zz * zz);
  const zScale = 1 / zLength;
  zx *= zScale;
  zy *= zScale;
  zz *= zScale;
  let yx = m[a + 3];
  let yy = m[a + 4];
  let yz = m[a + 5];
  const along = yx * zx + yy * zy + yz * zz;
  yx -= along * zx;
  yy -= along * zy;
  yz -= along * zz;
  const yLength = Math.sqrt(yx * yx + yy * yy + yz * yz);
  if (!(zLength >= ZERO && yLength >= ZERO && yLength >= 0.1 * Math.abs(along))) return orientSlowly(m, a, o);
  const yScale = 1 / yLength;
  yx *= yScale;
  yy *= yScale;
  yz *= yScale;
  m[o] = yy * zz - yz * zy;
  m[o + 1] = yz * zx - yx * zz;
  m[o + 2] = yx * zy - yy * zx;
  m[o + 3] = yx;
  m[o + 4] = yy;
  m[o + 5] = yz;
  m[o + 6] = zx;
  m[o + 7] = zy;
  m[o + 8] = zz;
  return false;
}

/**
 * The same for any matrix. Where a length counts as zero, z and y have one stand-in each, and after those the whole
 * is the identity.
 */
export function orientSlowly(m: Float64Array, from: number, to: number): boolean {
  const x = to;
  const y = to + 3;
  const z = to + 6;
  let flat = false;
  copyVector(m, from + 6, z);
  if (unitise(m, z, ZERO) < ZERO) {
    flat = true;
    cross(m, from, from + 3, z);
    if (unitise(m, z, ZERO) < ZERO) return identity(m, to);
  }
  if (perpendicular(m, from + 3, z, y, ZERO) < ZERO) {
    flat = true;
    cross(m, z, from, y);
    if (unitise(m, y, ZERO) < ZERO) return identity(m, to);
  }
  cross(m, y, z, x);
  return flat;
}

function identity(m: Float64Array, to: number): true {
  writeIdentity(m, to);
  return true;
}
