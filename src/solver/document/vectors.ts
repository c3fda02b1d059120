/** Readers of vectors and quaternions. */
import { type Reader, refuse, refuseValue } from './reader.ts';
import type { Axis, AxisName, Quat, Vec3 } from './rig.ts';
import { finite, oneOf, tuple } from './values.ts';

/** How far from 1 the length of a unit quaternion or axis may be; within, it is normalised. */
const UNIT_TOLERANCE = 1e-6;
/** What rounding alone leaves after dividing by a length; within, a value counts as unit and keeps its bits. */
const ROUNDING = 1e-15;

const lengthOf = (v: readonly number[]): number => Math.sqrt(v.reduce((sum, x) => sum + x * x, 0));

/** v/|v|, where |v| is 1 within 1e-6; a value that reading gave reads again to the same bits. */
function unit<T extends readonly number[]>(v: T, noun: string): T {
  const length = lengthOf(v);
  const off = Math.abs(length - 1);
  if (off <= ROUNDING) return v;
  if (!(off <= UNIT_TOLERANCE)) {
    return refuse(`a length of ${length}`, `${noun} of length 1, within 0.000001`);
  }
  return v.map((x) => x / length) as unknown as T;
}

export const vector = (noun: string): Reader<Vec3> => tuple<Vec3>(3, noun, finite);

const fourNumbers = tuple<Quat>(4, 'a unit quaternion [x, y, z, w]', finite);

/** A unit quaternion [x, y, z, w]. */
export const quaternion: Reader<Quat> = (value, known) => unit(fourNumbers(value, known), 'a quaternion');

const axisNumbers = vector('a unit vector');

/** A unit vector. */
export const unitVector: Reader<Vec3> = (value, known) => unit(axisNumbers(value, known), 'an axis vector');

const AXES: readonly AxisName[] = ['+x', '-x', '+y', '-y', '+z', '-z'];
const axisName = oneOf(AXES);

/** A named axis or a unit vector. */
export const axis: Reader<Axis> = (value, known) => {
  if (typeof value === 'string') return axisName(value, known);
  if (Array.isArray(value)) return unitVector(value, known);
  return refuseValue(value, `an axis: one of ${AXES.join(', ')}, or a unit vector`);
};

/** The format counts a length under this as zero. */
const ZERO_LENGTH = 1e-9;
const directionNumbers = vector('a direction');

/** A direction of any length but zero, as it stands. */
export const direction: Reader<Vec3> = (value, known) => {
  const v = directionNumbers(value, known);
  return lengthOf(v) >= ZERO_LENGTH ? v : refuseValue(v, 'a direction that is not zero');
};

const AXIS_VECTORS: Readonly<Record<AxisName, Vec3>> = {
  '+x': [1, 0, 0],
  '-x': [-1, 0, 0],
  '+y': [0, 1, 0],
  '-y': [0, -1, 0],
  '+z': [0, 0, 1],
  '-z': [0, 0, -1],
};

export const axisVector = (value: Axis): Vec3 => (typeof value === 'string' ? AXIS_VECTORS[value] : value);

/** |a × b|: the sine of the angle between the lines of two unit vectors, precise where it is small. */
export function sineBetween(a: Vec3, b: Vec3): number {
  return lengthOf([a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]);
}
