import { AXIS, DIRECTION, FULL, HINGE, ORIENTATION, TURN, VECTOR } from '../machine/layout.ts';
import { multiply, transform } from './matrix.ts';
import { slerp, turnAbout } from './slerp.ts';
import { cross, dot, set } from './vector.ts';

/** Sines under this, with the cosine negative, mean opposite. */
const OPPOSITE = 1e-9;

/**
 * Turns ORIENTATION by `weight` of the shortest turn that takes a bone's axis onto DIRECTION. `axis` is a unit vector in
 * memory, in the bone's frame. If it points exactly away, the turn is half a turn about `spare`, another such
 * vector, and at part weight positive.
 */
export function aimShortest(m: Float64Array, axis: number, spare: number, weight: number): void {
  transform(m, ORIENTATION, axis, AXIS);
  const c = dot(m, AXIS, DIRECTION);
  if (c < 0) {
    aimBackward(m, c, spare, weight);
    return;
  }
  cross(m, AXIS, DIRECTION, HINGE);
  turnByHinge(m, c, 1 / (1 + c), weight);
}

/**
 * Next to opposite directions the cross product with their sum keeps its precision, and so does 1/(1 + c) written as
 * (1 − c)/|v|².
 */
function aimBackward(m: Float64Array, c: number, spare: number, weight: number): void {
  set(m, VECTOR, m[AXIS] + m[DIRECTION], m[AXIS + 1] + m[DIRECTION + 1], m[AXIS + 2] + m[DIRECTION + 2]);
  cross(m, AXIS, VECTOR, HINGE);
  const square = dot(m, HINGE, HINGE);
  if (square < OPPOSITE * OPPOSITE) {
    turnAbout(m, ORIENTATION, spare, weight * Math.PI);
    return;
  }
  turnByHinge(m, c, (1 - c) / square, weight);
}

/** Turns by part of R = c·1 + [v]× + k·v·vᵀ with v = axis × direction in HINGE, c their cosine, k = 1/(1 + c). */
function turnByHinge(m: Float64Array, c: number, k: number, weight: number): void {
  const x = m[HINGE];
  const y = m[HINGE + 1];
  const z = m[HINGE + 2];
  set(m, TURN, c + k * x * x, k * x * y + z, k * x * z - y);
  set(m, TURN + 3, k * x * y - z, c + k * y * y, k * y * z + x);
  set(m, TURN + 6, k * x * z + y, k * y * z - x, c + k * z * z);
  multiply(m, TURN, ORIENTATION, FULL);
  slerp(m, ORIENTATION, FULL, weight);
}
