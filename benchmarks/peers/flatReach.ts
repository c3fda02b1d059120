import { turnColumns } from '../../src/solver/links/turnColumns.ts';

/**
 * What one would write by hand for two bones without sizes, bent already and without a pole: the practical limit of this
 * machine. Twelve doubles a world.
 */
export function flatReach(m: Float64Array, upper: number, lower: number, hook: number, a: number, b: number): void {
  const px = m[upper + 9];
  const py = m[upper + 10];
  const pz = m[upper + 11];
  let dx = m[hook + 9] - px;
  let dy = m[hook + 10] - py;
  let dz = m[hook + 11] - pz;
  const asked = Math.sqrt(dx * dx + dy * dy + dz * dz);
  dx /= asked;
  dy /= asked;
  dz /= asked;
  const reached = Math.min(a + b, Math.max(Math.abs(a - b), asked));
  const k = (a * a + reached * reached - b * b) / (2 * reached);
  const h = Math.sqrt(Math.max(0, a * a - k * k));
  const ux = m[upper + 6];
  const uy = m[upper + 7];
  const uz = m[upper + 8];
  const vx = m[lower + 6];
  const vy = m[lower + 7];
  const vz = m[lower + 8];
  let nx = uy * vz - uz * vy;
  let ny = uz * vx - ux * vz;
  let nz = ux * vy - uy * vx;
  const bent = 1 / Math.sqrt(nx * nx + ny * ny + nz * nz);
  nx *= bent;
  ny *= bent;
  nz *= bent;
  let ex = dy * nz - dz * ny;
  let ey = dz * nx - dx * nz;
  let ez = dx * ny - dy * nx;
  const side = 1 / Math.sqrt(ex * ex + ey * ey + ez * ez);
  ex *= side;
  ey *= side;
  ez *= side;
  const hx = ey * dz - ez * dy;
  const hy = ez * dx - ex * dz;
  const hz = ex * dy - ey * dx;
  const zx = (k * dx + h * ex) / a;
  const zy = (k * dy + h * ey) / a;
  const zz = (k * dz + h * ez) / a;
  const c = reached - k;
  const wx = (c * dx - h * ex) / b;
  const wy = (c * dy - h * ey) / b;
  const wz = (c * dz - h * ez) / b;
  turnColumns(m, upper, ux, uy, uz, nx, ny, nz, zx, zy, zz, hx, hy, hz);
  turnColumns(m, lower, vx, vy, vz, nx, ny, nz, wx, wy, wz, hx, hy, hz);
  m[lower + 9] = px + a * zx;
  m[lower + 10] = py + a * zy;
  m[lower + 11] = pz + a * zz;
}
