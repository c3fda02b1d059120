const INDEX = 0x3fffffff;
const ZERO = 1e-9;

/** A point in code: the bone's world, and where the distance from its base along its z lies among the constants. */
export const POINT_INTS = 2;

/** Writes the point at `at` of the code, rig space. */
export function writePoint(code: Int32Array, m: Float64Array, at: number, to: number): void {
  const world = code[at] & INDEX;
  const along = m[code[at + 1]];
  m[to] = m[world + 9] + m[world + 6] * along;
  m[to + 1] = m[world + 10] + m[world + 7] * along;
  m[to + 2] = m[world + 11] + m[world + 8] * along;
}

/**
 * Writes the unit vector from the base of a world to the point at `at` of the code, and after it their distance in
 * metres. Returns false if that is under 1e-9; the vector is not a unit vector then.
 */
export function writeDirection(code: Int32Array, m: Float64Array, world: number, at: number, to: number): boolean {
  const self = world & INDEX;
  const other = code[at] & INDEX;
  const along = m[code[at + 1]];
  const x = m[other + 9] + m[other + 6] * along - m[self + 9];
  const y = m[other + 10] + m[other + 7] * along - m[self + 10];
  const z = m[other + 11] + m[other + 8] * along - m[self + 11];
  const distance = Math.sqrt(x * x + y * y + z * z);
  const isFar = distance >= ZERO;
  const scale = isFar ? 1 / distance : 1;
  m[to] = x * scale;
  m[to + 1] = y * scale;
  m[to + 2] = z * scale;
  m[to + 3] = distance;
  return isFar;
}
