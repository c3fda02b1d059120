import type { Axis } from '../../solver/document/rig.ts';
import { axisVector } from '../../solver/document/vectors.ts';
import { orient } from '../../solver/geometry/orient.ts';
import { atan2 } from '../../solver/number/atan2.ts';
import { radToDeg } from '../../solver/number/degrees.ts';

/*
 * Measurements on packed world transforms: 12 doubles a bone, three columns and the base. `offset` is where
 * a bone's transform starts. Rig space, metres in; degrees and millimetres out.
 */

/** Under these a length is left to the solver's own orient, which has a stand-in for each that counts as zero. */
const SMALL_SQUARE = 1e-12;
/** Under this nothing overflows. */
const LARGE_SQUARE = 1e60;

/**
 * orient(A) of a bone's transform: a rotation, three columns. Plain numbers in a short list, because this runs at every
 * measurement, and a typed array of that length costs more to make than all the rest.
 */
function orientationOf(world: Float64Array, offset: number): ArrayLike<number> {
  const [zx, zy, zz] = [world[offset + 6]!, world[offset + 7]!, world[offset + 8]!];
  const zSquare = zx * zx + zy * zy + zz * zz;
  const along = (world[offset + 3]! * zx + world[offset + 4]! * zy + world[offset + 5]! * zz) / zSquare;
  const px = world[offset + 3]! - along * zx;
  const py = world[offset + 4]! - along * zy;
  const pz = world[offset + 5]! - along * zz;
  const ySquare = px * px + py * py + pz * pz;
  const isPlain = zSquare > SMALL_SQUARE && ySquare > SMALL_SQUARE && ySquare > 1e-6 * along * along * zSquare;
  if (!isPlain) return carefully(world, offset);
  const [zScale, yScale] = [1 / Math.sqrt(zSquare), 1 / Math.sqrt(ySquare)];
  const [ax, ay, az] = [zx * zScale, zy * zScale, zz * zScale];
  const [ux, uy, uz] = [px * yScale, py * yScale, pz * yScale];
  return [uy * az - uz * ay, uz * ax - ux * az, ux * ay - uy * ax, ux, uy, uz, ax, ay, az];
}

function carefully(world: Float64Array, offset: number): ArrayLike<number> {
  const columns = new Float64Array(18);
  for (let i = 0; i < 9; i++) columns[i] = world[offset + i]!;
  orient(columns, 0, 9);
  return columns.subarray(9);
}

/** Writes where an axis of the bone points, a unit vector in rig space. */
export function axisOf(world: Float64Array, offset: number, axis: Axis, out: Float64Array): void {
  const [x, y, z] = axisVector(axis);
  const r = orientationOf(world, offset);
  for (let i = 0; i < 3; i++) out[i] = r[i]! * x + r[3 + i]! * y + r[6 + i]! * z;
}

/** Writes the point `along` metres from the base toward the tip, as the bone is posed: W·(0, 0, along). */
export function pointOf(world: Float64Array, offset: number, along: number, out: Float64Array): void {
  for (let i = 0; i < 3; i++) out[i] = world[offset + 9 + i]! + along * world[offset + 6 + i]!;
}

/** Writes a bone's transform as another bone sees it, turned and moved but not scaled: 12 doubles. */
export function seenFrom(world: Float64Array, viewer: number, bone: number, out: Float64Array): void {
  const r = orientationOf(world, viewer);
  for (let column = 0; column < 12; column += 3) {
    const from = column === 9 ? viewer + 9 : -1;
    const x = world[bone + column]! - (from < 0 ? 0 : world[from]!);
    const y = world[bone + column + 1]! - (from < 0 ? 0 : world[from + 1]!);
    const z = world[bone + column + 2]! - (from < 0 ? 0 : world[from + 2]!);
    for (let i = 0; i < 3; i++) out[column + i] = r[3 * i]! * x + r[3 * i + 1]! * y + r[3 * i + 2]! * z;
  }
}

/**
 * Degrees between two vectors, by atan2(|a×b|, a·b), which keeps its accuracy next to 0° and 180°
 * (W. Kahan, "How futile are mindless assessments of roundoff", 2006, §12; from memory). 0 if either is zero.
 */
export function angleBetweenDeg(a: Float64Array, b: Float64Array): number {
  const [ax, ay, az] = [a[0]!, a[1]!, a[2]!];
  const [bx, by, bz] = [b[0]!, b[1]!, b[2]!];
  const [cx, cy, cz] = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
  return radToDeg(atan2(Math.sqrt(cx * cx + cy * cy + cz * cz), ax * bx + ay * by + az * bz));
}

/** Degrees of the turn that takes one orientation to the other. */
export function turnBetweenDeg(a: Float64Array, aOffset: number, b: Float64Array, bOffset: number): number {
  if (isTurnedAlike(a, aOffset, b, bOffset)) return 0;
  const p = orientationOf(a, aOffset);
  const q = orientationOf(b, bOffset);
  // R = P·Qᵀ; its trace gives 1 + 2 cos, its antisymmetric part 2 sin times the axis.
  const r = (row: number, column: number) =>
    p[row]! * q[column]! + p[3 + row]! * q[3 + column]! + p[6 + row]! * q[6 + column]!;
  const [x, y, z] = [r(2, 1) - r(1, 2), r(0, 2) - r(2, 0), r(1, 0) - r(0, 1)];
  const cosTwice = r(0, 0) + r(1, 1) + r(2, 2) - 1;
  return radToDeg(atan2(Math.sqrt(x * x + y * y + z * z), cosTwice));
}

/** Whether two transforms have the very same y and z axes, of a length that can be squared; then the turn is exactly 0. */
function isTurnedAlike(a: Float64Array, aOffset: number, b: Float64Array, bOffset: number): boolean {
  let size = 0;
  for (let i = 3; i < 9; i++) {
    if (a[aOffset + i] !== b[bOffset + i]) return false;
    size += a[aOffset + i]! * a[aOffset + i]!;
  }
  return size < LARGE_SQUARE;
}

/** How far a bone's base or tip has gone, the larger, in millimetres; of two bones each with its own length in metres. */
export function moveBetweenMm(
  a: Float64Array,
  aOffset: number,
  b: Float64Array,
  bOffset: number,
  length: number,
  bLength = length,
): number {
  return 1000 * Math.max(gap(a, aOffset, 0, b, bOffset, 0), gap(a, aOffset, length, b, bOffset, bLength));
}

/** Metres between the points so many metres from the base of each. */
function gap(
  a: Float64Array,
  aOffset: number,
  aAlong: number,
  b: Float64Array,
  bOffset: number,
  bAlong: number,
): number {
  let sum = 0;
  for (let i = 0; i < 3; i++) {
    const before = a[aOffset + 9 + i]! + aAlong * a[aOffset + 6 + i]!;
    const after = b[bOffset + 9 + i]! + bAlong * b[bOffset + 6 + i]!;
    sum += (before - after) * (before - after);
  }
  return Math.sqrt(sum);
}
