/** Rule 4: q·turn(w·a about n), where q⁻¹·full is the turn by a in 0..180° about n. */
import { type Matrix, product, transposed } from './matrix.ts';
import { toQuaternion, turnAbout } from './rotation.ts';
import { negate, size, unit, type Vector } from './vector.ts';

const HALF_TURN_MARGIN_RAD = 2e-9;

export function slerp(q: Matrix, full: Matrix, weight: number): Matrix {
  if (weight === 1) return full;
  const [x, y, z, w] = toQuaternion(product(transposed(q), full));
  const v: Vector = [x, y, z];
  if (size(v) === 0) return q;
  const angleRad = 2 * Math.atan2(size(v), w);
  const isHalfTurn = Math.PI - angleRad < HALF_TURN_MARGIN_RAD;
  const n = isHalfTurn ? withPositiveLead(unit(v)) : unit(v);
  return product(q, turnAbout(n, weight * angleRad));
}

function withPositiveLead(n: Vector): Vector {
  const lead = n.find((component) => Math.abs(component) > 1e-9);
  return lead !== undefined && lead < 0 ? negate(n) : n;
}
