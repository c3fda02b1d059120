import { atan2 } from '../number/index.ts';
import { isTurn } from './isTurn.ts';
import { INHERITS } from './restFrame.ts';
import { towardPlus } from './twist.ts';

const INDEX = 0x3fffffff;
const ALL = INHERITS.all;
/** Where the matrix of a rest local starts. */
const MATRIX = 7;
/** The axis is turned over less than this cosine says. */
const BEHIND = -0.5;

/**
 * The twist about x, y or z (0, 1, 2) of the world at `source` from its rest frame, which stands at `frame` of the code, in
 * radians: what writeRestFrame, orient and writeTwist give, in one over plain locals, where nothing is special. NaN where
 * something is: a parent not taken whole, size or shear, an axis turned nearly over.
 */
export function plainTwist(code: Int32Array, m: Float64Array, frame: number, source: number, axis: number): number {
  if (code[frame + 1] !== ALL) return Number.NaN;
  const p = code[frame] & INDEX;
  const p0 = m[p];
  const p1 = m[p + 1];
  const p2 = m[p + 2];
  const p3 = m[p + 3];
  const p4 = m[p + 4];
  const p5 = m[p + 5];
  const p6 = m[p + 6];
  const p7 = m[p + 7];
  const p8 = m[p + 8];
  const i = 3 * axis;
  const j = axis === 2 ? 0 : i + 3;
  const k = axis === 0 ? 6 : i - 3;
  let s = (source + i) & INDEX;
  const ix = m[s];
  const iy = m[s + 1];
  const iz = m[s + 2];
  s = (source + j) & INDEX;
  const jx = m[s];
  const jy = m[s + 1];
  const jz = m[s + 2];
  s = (source + k) & INDEX;
  const kx = m[s];
  const ky = m[s + 1];
  const kz = m[s + 2];
  if (!(isTurn(m, p) && isTurn(m, source))) return Number.NaN;

  // Column by column of the rest frame, seen from the parent: parent times rest.
  const rest = code[frame + 2] + MATRIX;
  let r = (rest + i) & INDEX;
  let x = m[r];
  let y = m[r + 1];
  let z = m[r + 2];
  const over = (p0 * x + p3 * y + p6 * z) * ix + (p1 * x + p4 * y + p7 * z) * iy + (p2 * x + p5 * y + p8 * z) * iz;
  if (!(over > BEHIND)) return Number.NaN;
  r = (rest + j) & INDEX;
  x = m[r];
  y = m[r + 1];
  z = m[r + 2];
  const fx = p0 * x + p3 * y + p6 * z;
  const fy = p1 * x + p4 * y + p7 * z;
  const fz = p2 * x + p5 * y + p8 * z;
  r = (rest + k) & INDEX;
  x = m[r];
  y = m[r + 1];
  z = m[r + 2];
  const gx = p0 * x + p3 * y + p6 * z;
  const gy = p1 * x + p4 * y + p7 * z;
  const gz = p2 * x + p5 * y + p8 * z;
  const sine = gx * jx + gy * jy + gz * jz - (fx * kx + fy * ky + fz * kz);
  const cosine = fx * jx + fy * jy + fz * jz + (gx * kx + gy * ky + gz * kz);
  return towardPlus(atan2(sine, cosine));
}
