/** Quaternions [x, y, z, w] in memory, by where they start. */

/** Writes the 3×3 matrix of a unit quaternion. */
export function matrixOfQuaternion(m: Float64Array, q: number, to: number): void {
  const x = m[q];
  const y = m[q + 1];
  const z = m[q + 2];
  const w = m[q + 3];
  m[to] = 1 - 2 * (y * y + z * z);
  m[to + 1] = 2 * (x * y + w * z);
  m[to + 2] = 2 * (x * z - w * y);
  m[to + 3] = 2 * (x * y - w * z);
  m[to + 4] = 1 - 2 * (x * x + z * z);
  m[to + 5] = 2 * (y * z + w * x);
  m[to + 6] = 2 * (x * z + w * y);
  m[to + 7] = 2 * (y * z - w * x);
  m[to + 8] = 1 - 2 * (x * x + y * y);
}

/**
 * Writes the unit quaternion of a rotation matrix, with w ≥ 0. It divides by the largest of its four parts, so that
 * small parts keep their absolute precision (S. W. Shepperd, Quaternion from rotation matrix, 1978; from memory).
 */
export function quaternionOfMatrix(m: Float64Array, a: number, to: number): void {
  const xx = m[a];
  const yy = m[a + 4];
  const zz = m[a + 8];
  const trace = xx + yy + zz;
  const yzLess = m[a + 5] - m[a + 7];
  const zxLess = m[a + 6] - m[a + 2];
  const xyLess = m[a + 1] - m[a + 3];
  if (trace >= xx && trace >= yy && trace >= zz) {
    write(m, to, yzLess, zxLess, xyLess, 1 + trace);
    return;
  }
  const yzMore = m[a + 5] + m[a + 7];
  const zxMore = m[a + 6] + m[a + 2];
  const xyMore = m[a + 1] + m[a + 3];
  if (xx >= yy && xx >= zz) {
    write(m, to, 1 + xx - yy - zz, xyMore, zxMore, yzLess);
    return;
  }
  if (yy >= zz) {
    write(m, to, xyMore, 1 + yy - zz - xx, yzMore, zxLess);
    return;
  }
  write(m, to, zxMore, yzMore, 1 + zz - xx - yy, xyLess);
}

function write(m: Float64Array, to: number, x: number, y: number, z: number, w: number): void {
  const length = Math.sqrt(x * x + y * y + z * z + w * w);
  const by = w < 0 ? -length : length;
  m[to] = x / by;
  m[to + 1] = y / by;
  m[to + 2] = z / by;
  m[to + 3] = w / by;
}

/** Turns the quaternion further, about its own x, y or z (0, 1, 2), by the angle with this half sine and half cosine. */
export function turnQuaternion(m: Float64Array, q: number, axis: number, sinHalf: number, cosHalf: number): void {
  const i = q + axis;
  const j = q + ((axis + 1) % 3);
  const k = q + ((axis + 2) % 3);
  const w = q + 3;
  const qi = m[i];
  const qj = m[j];
  const qk = m[k];
  const qw = m[w];
  m[i] = qi * cosHalf + qw * sinHalf;
  m[j] = qj * cosHalf + qk * sinHalf;
  m[k] = qk * cosHalf - qj * sinHalf;
  m[w] = qw * cosHalf - qi * sinHalf;
}
