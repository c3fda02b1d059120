/** Dual quaternions of eight doubles in memory, by where they start: real x y z w, dual x y z w. */

/**
 * Writes the unit dual quaternion that turns by the unit quaternion at `q` and then moves by the vector at `t`:
 * real = q, dual = ½·t·q (L. Kavan, S. Collins, J. Žára, C. O'Sullivan, Skinning with Dual Quaternions, I3D 2007).
 */
export function writeDual(
  turns: Float64Array,
  q: number,
  moves: Float64Array,
  t: number,
  out: Float64Array,
  to: number,
): void {
  const [x, y, z, w] = [turns[q], turns[q + 1], turns[q + 2], turns[q + 3]];
  const [tx, ty, tz] = [moves[t], moves[t + 1], moves[t + 2]];
  out[to] = x;
  out[to + 1] = y;
  out[to + 2] = z;
  out[to + 3] = w;
  out[to + 4] = 0.5 * (tx * w + ty * z - tz * y);
  out[to + 5] = 0.5 * (ty * w + tz * x - tx * z);
  out[to + 6] = 0.5 * (tz * w + tx * y - ty * x);
  out[to + 7] = -0.5 * (tx * x + ty * y + tz * z);
}

/**
 * Divides the dual quaternion at `at` by the length of its real part and writes where it takes the point (px, py, pz):
 * p + 2·r×(r×p + w·p) + 2·(w·d − d_w·r + r×d), r and d the vector parts (Kavan and others 2007, algorithm 1).
 */
export function applyDual(
  b: Float64Array,
  at: number,
  px: number,
  py: number,
  pz: number,
  out: Float64Array,
  to: number,
): void {
  const by = 1 / Math.sqrt(b[at] * b[at] + b[at + 1] * b[at + 1] + b[at + 2] * b[at + 2] + b[at + 3] * b[at + 3]);
  const rx = b[at] * by;
  const ry = b[at + 1] * by;
  const rz = b[at + 2] * by;
  const rw = b[at + 3] * by;
  const dx = b[at + 4] * by;
  const dy = b[at + 5] * by;
  const dz = b[at + 6] * by;
  const dw = b[at + 7] * by;
  const cx = ry * pz - rz * py + rw * px;
  const cy = rz * px - rx * pz + rw * py;
  const cz = rx * py - ry * px + rw * pz;
  out[to] = px + 2 * (ry * cz - rz * cy + rw * dx - dw * rx + ry * dz - rz * dy);
  out[to + 1] = py + 2 * (rz * cx - rx * cz + rw * dy - dw * ry + rz * dx - rx * dz);
  out[to + 2] = pz + 2 * (rx * cy - ry * cx + rw * dz - dw * rz + rx * dy - ry * dx);
}
