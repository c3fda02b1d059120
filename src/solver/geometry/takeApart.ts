import { FLAT, SHEAR } from '../machine/flagBits.ts';
import { orientSlowly } from './orient.ts';
import { dot } from './vector.ts';

/** A transform taken apart: nine doubles of orientation, then three of size. */
const SIZE = 9;

const INDEX = 0x3fffffff;
const ZERO = 1e-9;
/** Off the diagonal, up to this part of the largest size is rounding, not shear. */
const SHEAR_LEAST = 1e-6;

/**
 * Takes the 3×3 part at `from` apart into orientation and size at `to`, raising `flat` and `shear` on the link. Shear is
 * dropped. This is orient(A) and the diagonal of orient(A)ᵀ·A in one, over plain locals, for the matrices that nothing
 * is special about; nearly every link starts with it.
 */
export function takeApart(m: Float64Array, flags: Int32Array, from: number, to: number, link: number): void {
  const a = from & INDEX;
  const o = to & INDEX;
  const fx = m[a];
  const fy = m[a + 1];
  const fz = m[a + 2];
  let yx = m[a + 3];
  let yy = m[a + 4];
  let yz = m[a + 5];
  let zx = m[a + 6];
  let zy = m[a + 7];
  let zz = m[a + 8];
  const zSize = Math.sqrt(zx * zx + zy * zy + zz * zz);
  const zScale = 1 / zSize;
  zx *= zScale;
  zy *= zScale;
  zz *= zScale;
  const along = yx * zx + yy * zy + yz * zz;
  yx -= along * zx;
  yy -= along * zy;
  yz -= along * zz;
  const ySize = Math.sqrt(yx * yx + yy * yy + yz * yz);
  if (!(zSize >= ZERO && ySize >= ZERO && ySize >= 0.1 * Math.abs(along))) {
    takeApartSlowly(m, flags, a, o, link);
    return;
  }
  const yScale = 1 / ySize;
  yx *= yScale;
  yy *= yScale;
  yz *= yScale;
  const xx = yy * zz - yz * zy;
  const xy = yz * zx - yx * zz;
  const xz = yx * zy - yy * zx;
  const xSize = xx * fx + xy * fy + xz * fz;
  const most = SHEAR_LEAST * Math.max(Math.abs(xSize), ySize, zSize);
  if (
    Math.abs(along) > most ||
    Math.abs(yx * fx + yy * fy + yz * fz) > most ||
    Math.abs(zx * fx + zy * fy + zz * fz) > most
  ) {
    flags[link] |= SHEAR;
  }
  m[o] = xx;
  m[o + 1] = xy;
  m[o + 2] = xz;
  m[o + 3] = yx;
  m[o + 4] = yy;
  m[o + 5] = yz;
  m[o + 6] = zx;
  m[o + 7] = zy;
  m[o + 8] = zz;
  m[o + 9] = xSize;
  m[o + 10] = ySize;
  m[o + 11] = zSize;
}

/** The same for any matrix. */
function takeApartSlowly(m: Float64Array, flags: Int32Array, from: number, to: number, link: number): void {
  if (orientSlowly(m, from, to)) flags[link] |= FLAT;
  let largest = 0;
  let shear = 0;
  for (let i = 0; i < 9; i += 3) {
    for (let j = 0; j < 9; j += 3) {
      const part = dot(m, to + i, from + j);
      if (i !== j) shear = Math.max(shear, Math.abs(part));
      else {
        m[to + SIZE + i / 3] = part;
        largest = Math.max(largest, Math.abs(part));
      }
    }
  }
  if (shear > SHEAR_LEAST * largest) flags[link] |= SHEAR;
}

/** Writes R(q)·S(s) to the 3×3 part at `to`, which may be where the orientation lies. */
export function putTogether(m: Float64Array, orientation: number, size: number, to: number): void {
  const o = orientation & INDEX;
  const a = to & INDEX;
  const sx = m[size];
  const sy = m[size + 1];
  const sz = m[size + 2];
  m[a] = m[o] * sx;
  m[a + 1] = m[o + 1] * sx;
  m[a + 2] = m[o + 2] * sx;
  m[a + 3] = m[o + 3] * sy;
  m[a + 4] = m[o + 4] * sy;
  m[a + 5] = m[o + 5] * sy;
  m[a + 6] = m[o + 6] * sz;
  m[a + 7] = m[o + 7] * sz;
  m[a + 8] = m[o + 8] * sz;
}
