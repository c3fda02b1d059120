/** Vectors of three doubles in memory, by where they start. Destination last; it may be one of the sources. */

/** Lengths under this count as zero: metres, or ratios. */
export const ZERO = 1e-9;

export const dot = (m: Float64Array, a: number, b: number): number =>
  m[a] * m[b] + m[a + 1] * m[b + 1] + m[a + 2] * m[b + 2];

export const lengthOf = (m: Float64Array, a: number): number => Math.sqrt(dot(m, a, a));

export function set(m: Float64Array, to: number, x: number, y: number, z: number): void {
  m[to] = x;
  m[to + 1] = y;
  m[to + 2] = z;
}

export const copyVector = (m: Float64Array, from: number, to: number): void =>
  set(m, to, m[from], m[from + 1], m[from + 2]);

export const subtract = (m: Float64Array, a: number, b: number, to: number): void =>
  set(m, to, m[a] - m[b], m[a + 1] - m[b + 1], m[a + 2] - m[b + 2]);

export function cross(m: Float64Array, a: number, b: number, to: number): void {
  const x = m[a + 1] * m[b + 2] - m[a + 2] * m[b + 1];
  const y = m[a + 2] * m[b] - m[a] * m[b + 2];
  set(m, to, x, y, m[a] * m[b + 1] - m[a + 1] * m[b]);
}

/** Makes the vector a unit vector and returns the length it had; one under `least` is left as it is. */
export function unitise(m: Float64Array, at: number, least: number): number {
  const length = lengthOf(m, at);
  if (length < least) return length;
  set(m, at, m[at] / length, m[at + 1] / length, m[at + 2] / length);
  return length;
}

/**
 * Writes the unit of `v` made perpendicular to the unit vector `axis`, and returns the length before it was made
 * unit; under `least`, what is written is not a unit vector.
 */
export function perpendicular(m: Float64Array, v: number, axis: number, to: number, least: number): number {
  const along = cutAway(m, v, axis, to);
  const length = unitise(m, to, least);
  if (length < least || length > 0.1 * Math.abs(along)) return length;
  // What was cut away was large, so rounding left some of it; cutting twice is enough
  // (W. Kahan, in B. Parlett, The Symmetric Eigenvalue Problem, 1980, §6.9; from memory).
  cutAway(m, to, axis, to);
  unitise(m, to, 0);
  return length;
}

function cutAway(m: Float64Array, v: number, axis: number, to: number): number {
  const along = dot(m, v, axis);
  set(m, to, m[v] - along * m[axis], m[v + 1] - along * m[axis + 1], m[v + 2] - along * m[axis + 2]);
  return along;
}
