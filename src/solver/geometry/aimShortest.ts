import { atan2, cos, sin } from '../number/index.ts';
import { multiply, transform } from './matrix.ts';
import { slerp } from './slerp.ts';
import { turnAbout } from './turnAbout.ts';
import { cross, dot, set } from './vector.ts';

const INDEX = 0x3fffffff;
/** Sines under this, with the cosine negative, mean opposite. */
const OPPOSITE = 1e-9;
/** Down to this cosine the plain cross product and 1/(1 + c) lose no digit to speak of. */
const BEHIND = -0.5;

/** Doubles that aimShortest uses at its `spare`. */
export const AIM_SPARE = 36;

/**
 * Turns an orientation by `weight` of the shortest turn that takes a bone's axis onto a direction: three places in memory,
 * the axis in the bone's frame, both unit vectors. If the axis points exactly away, the turn is half a turn about
 * `half`, a unit vector across the axis in the bone's frame, and at part weight positive.
 *
 * R = c·1 + s·[v]× + k·v·vᵀ, with v = axis × direction and, at full weight, c their cosine, s = 1, k = 1/(1 + c).
 */
export function aimShortest(
  m: Float64Array,
  orientation: number,
  axis: number,
  half: number,
  direction: number,
  weight: number,
  spare: number,
): void {
  const o = orientation & INDEX;
  const d = direction & INDEX;
  transform(m, o, axis, spare);
  const ax = m[spare];
  const ay = m[spare + 1];
  const az = m[spare + 2];
  const dx = m[d];
  const dy = m[d + 1];
  const dz = m[d + 2];
  let c = ax * dx + ay * dy + az * dz;
  if (c < BEHIND) {
    aimBackward(m, o, half, d, c, weight, spare);
    return;
  }
  const x = ay * dz - az * dy;
  const y = az * dx - ax * dz;
  const z = ax * dy - ay * dx;
  let s = 1;
  let k = 1 / (1 + c);
  if (weight !== 1) {
    const sine = Math.sqrt(x * x + y * y + z * z);
    if (sine === 0) return;
    const angleRad = weight * atan2(sine, c);
    c = cos(angleRad);
    s = sin(angleRad) / sine;
    k = (s * s) / (1 + c);
  }
  const end = o + 9;
  for (let i = o; i < end; i += 3) {
    const ox = m[i];
    const oy = m[i + 1];
    const oz = m[i + 2];
    const along = k * (x * ox + y * oy + z * oz);
    m[i] = c * ox + s * (y * oz - z * oy) + along * x;
    m[i + 1] = c * oy + s * (z * ox - x * oz) + along * y;
    m[i + 2] = c * oz + s * (x * oy - y * ox) + along * z;
  }
}

/**
 * Next to opposite directions the cross product with their sum keeps its precision, and so does k written as
 * (1 − c)/|v|².
 */
function aimBackward(
  m: Float64Array,
  orientation: number,
  half: number,
  direction: number,
  c: number,
  weight: number,
  spare: number,
): void {
  const axis = spare;
  const sum = spare + 3;
  const hinge = spare + 6;
  const turn = spare + 9;
  const full = spare + 18;
  for (let i = 0; i < 3; i++) m[sum + i] = m[axis + i] + m[direction + i];
  cross(m, axis, sum, hinge);
  const square = dot(m, hinge, hinge);
  if (square < OPPOSITE * OPPOSITE) {
    turnAbout(m, orientation, half, weight * Math.PI, spare);
    return;
  }
  writeTurn(m, hinge, c, (1 - c) / square, turn);
  multiply(m, turn, orientation, full);
  slerp(m, orientation, full, weight, spare);
}

/** c·1 + [v]× + k·v·vᵀ. */
function writeTurn(m: Float64Array, hinge: number, c: number, k: number, to: number): void {
  const x = m[hinge];
  const y = m[hinge + 1];
  const z = m[hinge + 2];
  set(m, to, c + k * x * x, k * x * y + z, k * x * z - y);
  set(m, to + 3, k * x * y - z, c + k * y * y, k * y * z + x);
  set(m, to + 6, k * x * z + y, k * y * z - x, c + k * z * z);
}
