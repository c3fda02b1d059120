/** Quaternions [x, y, z, w] in memory, by where they start. */

const INDEX = 0x3fffffff;

/** Writes the 3×3 matrix of a unit quaternion. */
export function matrixOfQuaternion(m: Float64Array, quaternion: number, to: number): void {
  const q = quaternion & INDEX;
  const c = to & INDEX;
  const x = m[q];
  const y = m[q + 1];
  const z = m[q + 2];
  const w = m[q + 3];
  m[c] = 1 - 2 * (y * y + z * z);
  m[c + 1] = 2 * (x * y + w * z);
  m[c + 2] = 2 * (x * z - w * y);
  m[c + 3] = 2 * (x * y - w * z);
  m[c + 4] = 1 - 2 * (x * x + z * z);
  m[c + 5] = 2 * (y * z + w * x);
  m[c + 6] = 2 * (x * z + w * y);
  m[c + 7] = 2 * (y * z - w * x);
  m[c + 8] = 1 - 2 * (x * x + y * y);
}

/** Turns an orientation further by a unit quaternion, in its own frame. */
export function turnByQuaternion(m: Float64Array, orientation: number, quaternion: number): void {
  const q = quaternion & INDEX;
  const x = m[q];
  const y = m[q + 1];
  const z = m[q + 2];
  const w = m[q + 3];
  const t0 = 1 - 2 * (y * y + z * z);
  const t1 = 2 * (x * y + w * z);
  const t2 = 2 * (x * z - w * y);
  const t3 = 2 * (x * y - w * z);
  const t4 = 1 - 2 * (x * x + z * z);
  const t5 = 2 * (y * z + w * x);
  const t6 = 2 * (x * z + w * y);
  const t7 = 2 * (y * z - w * x);
  const t8 = 1 - 2 * (x * x + y * y);
  const end = (orientation & INDEX) + 3;
  for (let i = orientation & INDEX; i < end; i++) {
    const a = m[i];
    const b = m[i + 3];
    const c = m[i + 6];
    m[i] = a * t0 + b * t1 + c * t2;
    m[i + 3] = a * t3 + b * t4 + c * t5;
    m[i + 6] = a * t6 + b * t7 + c * t8;
  }
}

/**
 * Writes the unit quaternion, w ≥ 0, of a rotation matrix. The largest of its four parts is taken from the diagonal, so
 * that small parts keep their absolute precision (S. W. Shepperd, Quaternion from rotation matrix, 1978; from memory).
 */
export function quaternionOfMatrix(m: Float64Array, a: number, to: number): void {
  const xx = m[a];
  const yy = m[a + 4];
  const zz = m[a + 8];
  const x = m[a + 5] - m[a + 7];
  const y = m[a + 6] - m[a + 2];
  const z = m[a + 1] - m[a + 3];
  if (xx + yy + zz > 0) writeUnit(m, to, x, y, z, 1 + xx + yy + zz);
  else if (xx >= yy && xx >= zz) writeUnit(m, to, 1 + xx - yy - zz, m[a + 1] + m[a + 3], m[a + 6] + m[a + 2], x);
  else if (yy >= zz) writeUnit(m, to, m[a + 1] + m[a + 3], 1 + yy - zz - xx, m[a + 5] + m[a + 7], y);
  else writeUnit(m, to, m[a + 6] + m[a + 2], m[a + 5] + m[a + 7], 1 + zz - xx - yy, z);
}

/**
 * The same of the turn from one orientation to another as seen from the first, both in memory, but of any length from 1 to
 * 4: many uses need no unit quaternion.
 */
export function quaternionOfTurn(m: Float64Array, from: number, full: number, to: number): void {
  const a = from & INDEX;
  const b = full & INDEX;
  const a0 = m[a];
  const a1 = m[a + 1];
  const a2 = m[a + 2];
  const a3 = m[a + 3];
  const a4 = m[a + 4];
  const a5 = m[a + 5];
  const a6 = m[a + 6];
  const a7 = m[a + 7];
  const a8 = m[a + 8];
  const b0 = m[b];
  const b1 = m[b + 1];
  const b2 = m[b + 2];
  const b3 = m[b + 3];
  const b4 = m[b + 4];
  const b5 = m[b + 5];
  const b6 = m[b + 6];
  const b7 = m[b + 7];
  const b8 = m[b + 8];
  const xx = a0 * b0 + a1 * b1 + a2 * b2;
  const yy = a3 * b3 + a4 * b4 + a5 * b5;
  const zz = a6 * b6 + a7 * b7 + a8 * b8;
  const xy = a0 * b3 + a1 * b4 + a2 * b5;
  const yx = a3 * b0 + a4 * b1 + a5 * b2;
  const xz = a0 * b6 + a1 * b7 + a2 * b8;
  const zx = a6 * b0 + a7 * b1 + a8 * b2;
  const yz = a3 * b6 + a4 * b7 + a5 * b8;
  const zy = a6 * b3 + a7 * b4 + a8 * b5;
  const q = to & INDEX;
  if (xx + yy + zz > 0) writeUpright(m, q, zy - yz, xz - zx, yx - xy, 1 + xx + yy + zz);
  else if (xx >= yy && xx >= zz) writeUpright(m, q, 1 + xx - yy - zz, xy + yx, xz + zx, zy - yz);
  else if (yy >= zz) writeUpright(m, q, xy + yx, 1 + yy - zz - xx, yz + zy, xz - zx);
  else writeUpright(m, q, xz + zx, yz + zy, 1 + zz - xx - yy, yx - xy);
}

function writeUpright(m: Float64Array, q: number, x: number, y: number, z: number, w: number): void {
  const sign = w < 0 ? -1 : 1;
  m[q] = sign * x;
  m[q + 1] = sign * y;
  m[q + 2] = sign * z;
  m[q + 3] = sign * w;
}

export function makeUnit(m: Float64Array, q: number): void {
  writeUnit(m, q, m[q], m[q + 1], m[q + 2], m[q + 3]);
}

function writeUnit(m: Float64Array, q: number, x: number, y: number, z: number, w: number): void {
  const length = Math.sqrt(x * x + y * y + z * z + w * w);
  const scale = (w < 0 ? -1 : 1) / length;
  m[q] = x * scale;
  m[q + 1] = y * scale;
  m[q + 2] = z * scale;
  m[q + 3] = w * scale;
}

/** Turns a quaternion further, about its own x, y or z (0, 1, 2), by the angle with this half sine and half cosine. */
export function turnQuaternion(m: Float64Array, q: number, axis: number, sinHalf: number, cosHalf: number): void {
  const i = (q + axis) & INDEX;
  const j = (axis === 2 ? q : q + axis + 1) & INDEX;
  const k = (axis === 0 ? q + 2 : q + axis - 1) & INDEX;
  const w = (q + 3) & INDEX;
  const qi = m[i];
  const qj = m[j];
  const qk = m[k];
  const qw = m[w];
  m[i] = qi * cosHalf + qw * sinHalf;
  m[j] = qj * cosHalf + qk * sinHalf;
  m[k] = qk * cosHalf - qj * sinHalf;
  m[w] = qw * cosHalf - qi * sinHalf;
}
