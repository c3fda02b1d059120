import type { Axis } from '../../src/solver/document/rig.ts';
import { negate, unit, unitX, unitY, unitZ, type Vector } from './vector.ts';

/** A named axis or an axis vector of a document, as a unit vector in the bone's own frame. */
export function axisVector(axis: Axis): Vector {
  if (typeof axis !== 'string') return unit(axis);
  const along = { x: unitX, y: unitY, z: unitZ }[axis[1] as 'x' | 'y' | 'z'];
  return axis[0] === '-' ? negate(along) : along;
}
