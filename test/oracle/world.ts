/** World transforms, and taking them apart as "Links, in order" says. */
import { apply, diagonal, identity, type Matrix, product, transposed } from './matrix.ts';
import { add, cross, madePerpendicular, size, unit, type Vector, zeroVector } from './vector.ts';

export interface World {
  readonly a: Matrix;
  readonly base: Vector;
}

export interface Parts {
  readonly p: Vector;
  readonly q: Matrix;
  readonly s: Vector;
}

export const rigSpace: World = { a: identity, base: zeroVector };

export const toRigSpace = (world: World, local: Vector): Vector => add(world.base, apply(world.a, local));

const COUNTS_AS_ZERO = 1e-9;
const isZero = (v: Vector): boolean => size(v) < COUNTS_AS_ZERO;

/** orient(A), and whether a length counted as zero on the way. */
export function orientation(a: Matrix): { rotation: Matrix; flat: boolean } {
  const thirdIsZero = isZero(a.z);
  const third = thirdIsZero ? cross(a.x, a.y) : a.z;
  if (isZero(third)) return { rotation: identity, flat: true };
  const z = unit(third);
  const perpendicular = madePerpendicular(a.y, z);
  const secondIsZero = isZero(perpendicular);
  const second = secondIsZero ? cross(z, a.x) : perpendicular;
  if (isZero(second)) return { rotation: identity, flat: true };
  const y = unit(second);
  return { rotation: { x: cross(y, z), y, z }, flat: thirdIsZero || secondIsZero };
}

export const orient = (a: Matrix): Matrix => orientation(a).rotation;

export function takenApart(world: World): { parts: Parts; flat: boolean; shear: boolean } {
  const { rotation, flat } = orientation(world.a);
  const left = product(transposed(rotation), world.a);
  const s: Vector = [left.x[0], left.y[1], left.z[2]];
  const offDiagonal = [left.x[1], left.x[2], left.y[0], left.y[2], left.z[0], left.z[1]];
  const largest = Math.max(...s.map(Math.abs));
  const shear = offDiagonal.some((entry) => Math.abs(entry) > 1e-6 * largest);
  return { parts: { p: world.base, q: rotation, s }, flat, shear };
}

export const putTogether = (parts: Parts): World => ({ a: product(parts.q, diagonal(parts.s)), base: parts.p });
