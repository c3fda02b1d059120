/**
 * Vectors, turns and axes across the plane x = 0. A mirrored frame has its +y and +z reflected and its +x opposite to
 * the reflection, S·M·S with S = diag(−1, 1, 1): a rotation by (x, y, z, w) becomes one by (x, −y, −z, w).
 */
import type { Axis, AxisName, Quat, Vec3 } from '../document/rig.ts';

/** −x, with 0 for 0: what lies on the plane stays as it is, to the bit. */
export const negate = (x: number): number => 0 - x;

/** A position, a move, a direction or an axis vector. */
export const reflectVector = ([x, y, z]: Vec3): Vec3 => [negate(x), y, z];

export const reflectTurn = ([x, y, z, w]: Quat): Quat => [x, negate(y), negate(z), w];

/** Angles about x, y and z, in any order of turning. */
export const reflectAngles = ([x, y, z]: Vec3): Vec3 => [x, negate(y), negate(z)];

const REFLECTED: Readonly<Record<AxisName, AxisName>> = {
  '+x': '-x',
  '-x': '+x',
  '+y': '+y',
  '-y': '-y',
  '+z': '+z',
  '-z': '-z',
};

export const reflectAxis = (axis: Axis): Axis => (typeof axis === 'string' ? REFLECTED[axis] : reflectVector(axis));

export type Bounds = readonly [number, number];

export const reflectBounds = ([min, max]: Bounds): Bounds => [negate(max), negate(min)];
