import type { Axis } from '../../solver/document/rig.ts';

/** A requirement's own axis in a mirrored frame: x changes sign. */
export function reflectedAxis<R extends { axis?: Axis }>(requirement: R): R {
  const { axis } = requirement;
  return axis === undefined ? requirement : { ...requirement, axis: opposedX(axis) };
}

export function opposedX(axis: Axis): Axis {
  if (axis === '+x') return '-x';
  if (axis === '-x') return '+x';
  return typeof axis === 'string' ? axis : [0 - axis[0], axis[1], axis[2]];
}
