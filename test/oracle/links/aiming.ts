/** The turn that aim and span share: an axis onto a direction, all the way or in part. */
import { apply, type Matrix, product } from '../matrix.ts';
import { shortestTurn, turnAbout } from '../rotation.ts';
import { slerp } from '../slerp.ts';
import { cross, dot, madePerpendicular, size, unit, unitX, unitY, unitZ, type Vector } from '../vector.ts';

const NEAR_M = 1e-9;
export const isNear = (offset: Vector): boolean => size(offset) < NEAR_M;

/** "If opposite (|a×d| < 1e-9, a·d < 0)." */
const isOpposite = (a: Vector, d: Vector): boolean => size(cross(a, d)) < 1e-9 && dot(a, d) < 0;

/** The bone axis least along the aim axis (ties x, y, z), made perpendicular to it; in the bone's frame. */
function halfTurnAxis(axis: Vector): Vector {
  const along = axis.map(Math.abs);
  const least = along.indexOf(Math.min(...along));
  return unit(madePerpendicular([unitX, unitY, unitZ][least], axis));
}

/** The orientation with `axis` (bone frame) on d (rig space): by the shortest turn, or half a turn where opposite. */
export function aimedFully(q: Matrix, axis: Vector, d: Vector): Matrix {
  const a = apply(q, axis);
  if (isOpposite(a, d)) return product(q, turnAbout(halfTurnAxis(axis), Math.PI));
  return product(shortestTurn(a, d), q);
}

/** As aimedFully at part weight: the half-turn goes the positive way round instead of by the slerp rule. */
export function aimed(q: Matrix, axis: Vector, d: Vector, weight: number): Matrix {
  if (isOpposite(apply(q, axis), d)) return product(q, turnAbout(halfTurnAxis(axis), weight * Math.PI));
  return slerp(q, aimedFully(q, axis, d), weight);
}
