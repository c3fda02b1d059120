import { set, unitise, ZERO } from './vector.ts';

/** A point in code: the bone's world, and where the distance from its base along its z lies among the constants. */
export const POINT_INTS = 2;

/** Writes the point at `at` of the code, rig space. */
export function writePoint(code: Int32Array, m: Float64Array, at: number, to: number): void {
  const world = code[at];
  const along = m[code[at + 1]];
  set(
    m,
    to,
    m[world + 9] + m[world + 6] * along,
    m[world + 10] + m[world + 7] * along,
    m[world + 11] + m[world + 8] * along,
  );
}

/**
 * Writes the direction from the base of a world to the point at `at` of the code, and returns their distance in
 * metres. Under 1e-9 m what is written is not a unit vector. */
export function writeDirection(code: Int32Array, m: Float64Array, world: number, at: number, to: number): number {
  writePoint(code, m, at, to);
  set(m, to, m[to] - m[world + 9], m[to + 1] - m[world + 10], m[to + 2] - m[world + 11]);
  return unitise(m, to, ZERO);
}
