import { transform } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { writeDirection } from '../geometry/point.ts';
import { cross, dot, lengthOf } from '../geometry/vector.ts';
import { atan2 } from '../number/index.ts';

/** Scratch. */
const DIRECTION = 0;
const ORIENTATION = 4;
const AXIS = 13;
const HINGE = 16;

/** Metres from a world's base to the point at `target` of the code. */
export function distanceToTarget(code: Int32Array, m: Float64Array, self: number, target: number): number {
  writeDirection(code, m, self, target, DIRECTION);
  return m[DIRECTION + 3];
}

/**
 * Radians between a bone's axis (a unit vector in memory, in its own frame) and straight away from its target; π, the
 * farthest, where the target lies at the base.
 */
export function angleFromOpposite(
  code: Int32Array,
  m: Float64Array,
  self: number,
  target: number,
  axis: number,
): number {
  if (!writeDirection(code, m, self, target, DIRECTION)) return Math.PI;
  orient(m, self, ORIENTATION);
  transform(m, ORIENTATION, axis, AXIS);
  cross(m, AXIS, DIRECTION, HINGE);
  return atan2(lengthOf(m, HINGE), -dot(m, AXIS, DIRECTION));
}
