/** What one would write by hand for links of worlds without sizes, for flatOtter.ts. */
import { turnColumns } from '../../src/solver/links/turnColumns.ts';

const full = new Float64Array(9);

export function copyTurn(m: Float64Array, from: number, to: number): void {
  for (let k = 0; k < 9; k++) m[to + k] = m[from + k];
}

/** Shortest turn of +z toward a base; returns the distance. */
export function turnToward(m: Float64Array, self: number, target: number, weight: number): number {
  let dx = m[target + 9] - m[self + 9];
  let dy = m[target + 10] - m[self + 10];
  let dz = m[target + 11] - m[self + 11];
  const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
  dx /= distance;
  dy /= distance;
  dz /= distance;
  const zx = m[self + 6];
  const zy = m[self + 7];
  const zz = m[self + 8];
  const x = zy * dz - zz * dy;
  const y = zz * dx - zx * dz;
  const z = zx * dy - zy * dx;
  let c = zx * dx + zy * dy + zz * dz;
  let s = 1;
  let k = 1 / (1 + c);
  if (weight !== 1) {
    const sine = Math.sqrt(x * x + y * y + z * z);
    const angleRad = weight * Math.atan2(sine, c);
    c = Math.cos(angleRad);
    s = Math.sin(angleRad) / sine;
    k = (s * s) / (1 + c);
  }
  for (let i = self; i < self + 9; i += 3) {
    const ox = m[i];
    const oy = m[i + 1];
    const oz = m[i + 2];
    const along = k * (x * ox + y * oy + z * oz);
    m[i] = c * ox + s * (y * oz - z * oy) + along * x;
    m[i + 1] = c * oy + s * (z * ox - x * oz) + along * y;
    m[i + 2] = c * oz + s * (x * oy - y * ox) + along * z;
  }
  return distance;
}

export function spanTo(m: Float64Array, self: number, target: number, length: number): void {
  const ratio = turnToward(m, self, target, 1) / length;
  const across = 1 / Math.sqrt(ratio);
  for (let k = 0; k < 6; k++) m[self + k] *= across;
  for (let k = 6; k < 9; k++) m[self + k] *= ratio;
}

/** +z toward a base, +y toward the +z of `up`. */
export function watchUp(m: Float64Array, self: number, target: number, up: number, weight: number): void {
  if (weight === 0) return;
  let dx = m[target + 9] - m[self + 9];
  let dy = m[target + 10] - m[self + 10];
  let dz = m[target + 11] - m[self + 11];
  const nearness = 1 / Math.sqrt(dx * dx + dy * dy + dz * dz);
  dx *= nearness;
  dy *= nearness;
  dz *= nearness;
  const along = m[up + 6] * dx + m[up + 7] * dy + m[up + 8] * dz;
  let ux = m[up + 6] - along * dx;
  let uy = m[up + 7] - along * dy;
  let uz = m[up + 8] - along * dz;
  const across = 1 / Math.sqrt(ux * ux + uy * uy + uz * uz);
  ux *= across;
  uy *= across;
  uz *= across;
  const to = weight === 1 ? m : full;
  const at = weight === 1 ? self : 0;
  to[at] = uy * dz - uz * dy;
  to[at + 1] = uz * dx - ux * dz;
  to[at + 2] = ux * dy - uy * dx;
  to[at + 3] = ux;
  to[at + 4] = uy;
  to[at + 5] = uz;
  to[at + 6] = dx;
  to[at + 7] = dy;
  to[at + 8] = dz;
  if (weight !== 1) turnPart(m, self, weight);
}

/** Turns a world part of the way to `full`, less than 120 degrees off. */
function turnPart(m: Float64Array, a: number, weight: number): void {
  let trace = 0;
  for (let k = 0; k < 9; k++) trace += m[a + k] * full[k];
  const dot = (i: number, j: number) => m[a + i] * full[j] + m[a + i + 1] * full[j + 1] + m[a + i + 2] * full[j + 2];
  let x = dot(6, 3) - dot(3, 6);
  let y = dot(0, 6) - dot(6, 0);
  let z = dot(3, 0) - dot(0, 3);
  const across = Math.sqrt(x * x + y * y + z * z);
  const halfRad = weight * Math.atan2(across, 1 + trace);
  const scale = Math.sin(halfRad) / across;
  const w = Math.cos(halfRad);
  x *= scale;
  y *= scale;
  z *= scale;
  for (let i = a; i < a + 3; i++) {
    const p = m[i];
    const q = m[i + 3];
    const r = m[i + 6];
    m[i] = p * (1 - 2 * (y * y + z * z)) + q * 2 * (x * y + w * z) + r * 2 * (x * z - w * y);
    m[i + 3] = p * 2 * (x * y - w * z) + q * (1 - 2 * (x * x + z * z)) + r * 2 * (y * z + w * x);
    m[i + 6] = p * 2 * (x * z + w * y) + q * 2 * (y * z - w * x) + r * (1 - 2 * (x * x + y * y));
  }
}

/** A limb in line, hinged about the upper's +x, with the elbow toward a pole. */
export function reachWithPole(
  m: Float64Array,
  upper: number,
  lower: number,
  b: number,
  target: number,
  pole: number,
): void {
  const px = m[upper + 9];
  const py = m[upper + 10];
  const pz = m[upper + 11];
  const [vx, vy, vz] = [m[lower + 6], m[lower + 7], m[lower + 8]];
  const [ux, uy, uz] = [m[upper + 6], m[upper + 7], m[upper + 8]];
  const [nx, ny, nz] = [m[upper], m[upper + 1], m[upper + 2]];
  const ax = m[lower + 9] - px;
  const ay = m[lower + 10] - py;
  const az = m[lower + 11] - pz;
  const a = Math.sqrt(ax * ax + ay * ay + az * az);
  let dx = m[target + 9] - px;
  let dy = m[target + 10] - py;
  let dz = m[target + 11] - pz;
  const asked = Math.sqrt(dx * dx + dy * dy + dz * dz);
  dx /= asked;
  dy /= asked;
  dz /= asked;
  let ex = m[pole + 9] - px;
  let ey = m[pole + 10] - py;
  let ez = m[pole + 11] - pz;
  const along = ex * dx + ey * dy + ez * dz;
  ex -= along * dx;
  ey -= along * dy;
  ez -= along * dz;
  const side = 1 / Math.sqrt(ex * ex + ey * ey + ez * ez);
  ex *= side;
  ey *= side;
  ez *= side;
  const reached = Math.min(a + b, Math.max(Math.abs(a - b), asked));
  const k = (a * a + reached * reached - b * b) / (2 * reached);
  const h =
    Math.sqrt(Math.max(0, (a + b - reached) * (reached + b - a) * (a + reached - b) * (a + b + reached))) /
    (2 * reached);
  const hx = ey * dz - ez * dy;
  const hy = ez * dx - ex * dz;
  const hz = ex * dy - ey * dx;
  const zx = (k * dx + h * ex) / a;
  const zy = (k * dy + h * ey) / a;
  const zz = (k * dz + h * ez) / a;
  const c = reached - k;
  turnColumns(m, upper, ux, uy, uz, nx, ny, nz, zx, zy, zz, hx, hy, hz);
  const w = [(c * dx - h * ex) / b, (c * dy - h * ey) / b, (c * dz - h * ez) / b];
  turnColumns(m, lower, vx, vy, vz, nx, ny, nz, w[0], w[1], w[2], hx, hy, hz);
  m[lower + 9] = px + a * zx;
  m[lower + 10] = py + a * zy;
  m[lower + 11] = pz + a * zz;
}
