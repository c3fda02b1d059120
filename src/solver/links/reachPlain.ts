import { POINT_INTS } from '../geometry/point.ts';
import { LINK_RECORD } from './linkKind.ts';
import { turnColumns } from './turnColumns.ts';

const PARENT = LINK_RECORD.INTS;
const LENGTH = PARENT + 1;
const TARGET = LENGTH + 1;
const HAS_POLE = TARGET + POINT_INTS;
const POLE = HAS_POLE + 1;

const INDEX = 0x3fffffff;
const ZERO = 1e-9;
/** Sines of the angle between the bones under this give no hinge. */
const BEND_LEAST = 1e-6;
/** What is this long after it was made perpendicular to a unit vector has lost no digit to speak of. */
const SINE_LEAST = 0.1;
/** Of the second and third column of a bone that is not next to flat, square units. */
const AREA_LEAST = 1e-5;
/** This far from a bound, as part of both lengths, the elbow does not lie in line. */
const IN_LINE = 1e-12;
/** A cosine up to this is a right angle but for rounding. */
const ROUNDING = 4e-15;

/**
 * Reaches at full weight with limbs that lie in line or are bent already, to targets within reach and poles well aside: what reach.ts
 * does in general, over plain locals. Returns false, with nothing written, where something is special.
 */
export function reachPlain(code: Int32Array, m: Float64Array, at: number): boolean {
  const upper = code[at + PARENT] & INDEX;
  const lower = code[at] & INDEX;
  const px = m[upper + 9];
  const py = m[upper + 10];
  const pz = m[upper + 11];

  let ux = m[lower + 9] - px;
  let uy = m[lower + 10] - py;
  let uz = m[lower + 11] - pz;
  const a = Math.sqrt(ux * ux + uy * uy + uz * uz);
  let scale = 1 / a;
  ux *= scale;
  uy *= scale;
  uz *= scale;
  const length = m[code[at + LENGTH]];
  let vx = m[lower + 6] * length;
  let vy = m[lower + 7] * length;
  let vz = m[lower + 8] * length;
  const b = Math.sqrt(vx * vx + vy * vy + vz * vz);
  scale = 1 / b;
  vx *= scale;
  vy *= scale;
  vz *= scale;
  let nx = uy * vz - uz * vy;
  let ny = uz * vx - ux * vz;
  let nz = ux * vy - uy * vx;
  const bent = Math.sqrt(nx * nx + ny * ny + nz * nz);
  if (!(a >= ZERO && b >= ZERO)) return false;
  if (bent >= BEND_LEAST) {
    nx /= bent;
    ny /= bent;
    nz /= bent;
  } else {
    // In one line: the upper's +x, as it is oriented, made perpendicular to the bone.
    const yx = m[upper + 3];
    const yy = m[upper + 4];
    const yz = m[upper + 5];
    const zx = m[upper + 6];
    const zy = m[upper + 7];
    const zz = m[upper + 8];
    nx = yy * zz - yz * zy;
    ny = yz * zx - yx * zz;
    nz = yx * zy - yy * zx;
    scale = 1 / Math.sqrt(nx * nx + ny * ny + nz * nz);
    nx *= scale;
    ny *= scale;
    nz *= scale;
    const lost = nx * ux + ny * uy + nz * uz;
    nx -= lost * ux;
    ny -= lost * uy;
    nz -= lost * uz;
    const left = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (!(left >= SINE_LEAST && scale < 1 / AREA_LEAST)) return false;
    scale = 1 / left;
    nx *= scale;
    ny *= scale;
    nz *= scale;
  }

  let other = code[at + TARGET] & INDEX;
  let along = m[code[at + TARGET + 1]];
  let dx = m[other + 9] + m[other + 6] * along - px;
  let dy = m[other + 10] + m[other + 7] * along - py;
  let dz = m[other + 11] + m[other + 8] * along - pz;
  const reached = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const sum = a + b;
  const inLine = IN_LINE * sum;
  if (!(reached >= ZERO && sum - reached > inLine && reached - Math.abs(a - b) > inLine)) return false;
  scale = 1 / reached;
  dx *= scale;
  dy *= scale;
  dz *= scale;

  let ex: number;
  let ey: number;
  let ez: number;
  if (code[at + HAS_POLE] === 1) {
    other = code[at + POLE] & INDEX;
    along = m[code[at + POLE + 1]];
    ex = m[other + 9] + m[other + 6] * along - px;
    ey = m[other + 10] + m[other + 7] * along - py;
    ez = m[other + 11] + m[other + 8] * along - pz;
    const far = Math.sqrt(ex * ex + ey * ey + ez * ez);
    if (!(far >= ZERO)) return false;
    scale = 1 / far;
    ex *= scale;
    ey *= scale;
    ez *= scale;
    along = ex * dx + ey * dy + ez * dz;
    ex -= along * dx;
    ey -= along * dy;
    ez -= along * dz;
  } else {
    ex = dy * nz - dz * ny;
    ey = dz * nx - dx * nz;
    ez = dx * ny - dy * nx;
  }
  const aside = Math.sqrt(ex * ex + ey * ey + ez * ez);
  if (!(aside >= SINE_LEAST)) return false;
  scale = 1 / aside;
  ex *= scale;
  ey *= scale;
  ez *= scale;
  if (
    Math.abs(nx * ux + ny * uy + nz * uz) > ROUNDING ||
    Math.abs(nx * vx + ny * vy + nz * vz) > ROUNDING ||
    Math.abs(ex * dx + ey * dy + ez * dz) > ROUNDING
  ) {
    return false;
  }

  // Euclid, Elements II.12–13; the height with the square as a product (Heron), which keeps its precision.
  const c = reached;
  const k = 0.5 * (c + ((a - b) * sum) / c);
  const h = Math.sqrt((a + b - c) * (b + c - a) * (a + c - b) * (a + b + c)) / (2 * c);
  const hx = ey * dz - ez * dy;
  const hy = ez * dx - ex * dz;
  const hz = ex * dy - ey * dx;
  scale = 1 / Math.sqrt(k * k + h * h);
  const tx = (k * dx + h * ex) * scale;
  const ty = (k * dy + h * ey) * scale;
  const tz = (k * dz + h * ez) * scale;
  turnColumns(m, upper, ux, uy, uz, nx, ny, nz, tx, ty, tz, hx, hy, hz);
  m[lower + 9] = px + a * tx;
  m[lower + 10] = py + a * ty;
  m[lower + 11] = pz + a * tz;
  const rest = c - k;
  scale = 1 / Math.sqrt(rest * rest + h * h);
  const wx = (rest * dx - h * ex) * scale;
  const wy = (rest * dy - h * ey) * scale;
  const wz = (rest * dz - h * ez) * scale;
  turnColumns(m, lower, vx, vy, vz, nx, ny, nz, wx, wy, wz, hx, hy, hz);
  return true;
}
