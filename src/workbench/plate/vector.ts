import type { Vec3 } from '../../solver/document/rig.ts';

/** Three-vectors for drawing, where a last bit does not matter. */
export const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const lengthOf = (a: Vec3): number => Math.sqrt(dot(a, a));

export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Length 1; `otherwise` for what has no length. */
export function unit(a: Vec3, otherwise: Vec3 = [0, 0, 1]): Vec3 {
  const length = lengthOf(a);
  return length < 1e-12 ? otherwise : scaled(a, 1 / length);
}
