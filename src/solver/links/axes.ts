import type { Axis, Vec3 } from '../document/rig.ts';

const NAMED = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;

/** The unit vector of an axis, in the bone's frame. */
export function axisVector(axis: Axis): Vec3 {
  if (typeof axis !== 'string') return unit(axis);
  const [x, y, z] = NAMED[axis[1] as 'x' | 'y' | 'z'];
  return axis[0] === '+' ? [x, y, z] : [-x, -y, -z];
}

/** Divides by the largest part first, so that the squares of very small or large parts are numbers still. */
export function unit([x, y, z]: Vec3): Vec3 {
  const largest = Math.max(Math.abs(x), Math.abs(y), Math.abs(z));
  const [sx, sy, sz] = [x / largest, y / largest, z / largest];
  const length = Math.sqrt(sx * sx + sy * sy + sz * sz);
  return [sx / length, sy / length, sz / length];
}

export const dotOf = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const crossOf = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The unit of `v` made perpendicular to the unit vector `axis`. */
export function perpendicularTo(v: Vec3, axis: Vec3): Vec3 {
  const along = dotOf(v, axis);
  return unit([v[0] - along * axis[0], v[1] - along * axis[1], v[2] - along * axis[2]]);
}

/** The bone axis that lies least along `axis` (ties x, y, z), made perpendicular to it. */
export function spareAxis(axis: Vec3): Vec3 {
  const sizes = axis.map(Math.abs);
  const least = sizes.indexOf(Math.min(...sizes));
  return perpendicularTo([least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0], axis);
}
