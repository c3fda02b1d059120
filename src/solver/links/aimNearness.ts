import { transform } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { writeDirection } from '../geometry/point.ts';
import { cross, dot, lengthOf, ZERO } from '../geometry/vector.ts';
import { AXIS, DIRECTION, HINGE, ORIENTATION } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { atan2 } from '../number/index.ts';

/** Metres from a world's base to the point at `target` of the code. */
export function distanceToTarget({ code, memory: m }: Machine, self: number, target: number): number {
  return writeDirection(code, m, self, target, DIRECTION);
}

/**
 * Radians between a bone's axis (a unit vector in memory, in its own frame) and straight away from its target; π, the
 * farthest, where the target lies at the base.
 */
export function angleFromOpposite(machine: Machine, self: number, target: number, axis: number): number {
  const m = machine.memory;
  if (distanceToTarget(machine, self, target) < ZERO) return Math.PI;
  orient(m, self, ORIENTATION);
  transform(m, ORIENTATION, axis, AXIS);
  cross(m, AXIS, DIRECTION, HINGE);
  return atan2(lengthOf(m, HINGE), -dot(m, AXIS, DIRECTION));
}
