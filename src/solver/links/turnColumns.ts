const INDEX = 0x3fffffff;

/**
 * Turns the three columns of a world by the turn that takes one frame to another. Each frame is given by two unit vectors
 * at right angles: from (u, n) to (v, h).
 */
export function turnColumns(
  m: Float64Array,
  world: number,
  ux: number,
  uy: number,
  uz: number,
  nx: number,
  ny: number,
  nz: number,
  vx: number,
  vy: number,
  vz: number,
  hx: number,
  hy: number,
  hz: number,
): void {
  const sx = uy * nz - uz * ny;
  const sy = uz * nx - ux * nz;
  const sz = ux * ny - uy * nx;
  const tx = vy * hz - vz * hy;
  const ty = vz * hx - vx * hz;
  const tz = vx * hy - vy * hx;
  const start = world & INDEX;
  for (let i = start; i < start + 9; i += 3) {
    const x = m[i];
    const y = m[i + 1];
    const z = m[i + 2];
    const a = ux * x + uy * y + uz * z;
    const b = nx * x + ny * y + nz * z;
    const c = sx * x + sy * y + sz * z;
    m[i] = vx * a + hx * b + tx * c;
    m[i + 1] = vy * a + hy * b + ty * c;
    m[i + 2] = vz * a + hz * b + tz * c;
  }
}
