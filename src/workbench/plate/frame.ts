import type { Vec3 } from '../../solver/document/rig.ts';
import { plus, scaled } from './vector.ts';

/** A bone's world transform as vectors: the three columns of its 3×3 part, and its base. */
export interface Frame {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  readonly base: Vec3;
}

export function frameAt(world: Float64Array, bone: number): Frame {
  const at = (i: number): Vec3 => [world[12 * bone + i]!, world[12 * bone + i + 1]!, world[12 * bone + i + 2]!];
  return { x: at(0), y: at(3), z: at(6), base: at(9) };
}

export function pointOf(frame: Frame, x: number, y: number, z: number): Vec3 {
  return plus(frame.base, plus(scaled(frame.x, x), plus(scaled(frame.y, y), scaled(frame.z, z))));
}
