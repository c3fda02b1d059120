/** Vectors of three doubles in memory, by where they start. Destination last; it may be one of the sources. */

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
  const ax = m[axis];
  const ay = m[axis + 1];
  const az = m[axis + 2];
  const along = m[v] * ax + m[v + 1] * ay + m[v + 2] * az;
  const x = m[v] - along * ax;
  const y = m[v + 1] - along * ay;
  const z = m[v + 2] - along * az;
  const length = Math.sqrt(x * x + y * y + z * z);
  const scale = length < least ? 1 : 1 / length;
  set(m, to, x * scale, y * scale, z * scale);
  if (length >= least && length < 0.1 * Math.abs(along)) cutAgain(m, axis, to);
  return length;
}

/**
 * Where much was cut away, rounding left some of it; cutting twice is enough
 * (W. Kahan, in B. Parlett, The Symmetric Eigenvalue Problem, 1980, §6.9; from memory).
 */
function cutAgain(m: Float64Array, axis: number, at: number): void {
  const along = dot(m, at, axis);
  set(m, at, m[at] - along * m[axis], m[at + 1] - along * m[axis + 1], m[at + 2] - along * m[axis + 2]);
  unitise(m, at, 0);
}
