/** What one would write by hand for aims of +z without sizes: the practical limit of this machine. Twelve doubles a world. */
export function flatAims(m: Float64Array, count: number): void {
  const kite = 12 * count + 9;
  const kx = m[kite];
  const ky = m[kite + 1];
  const kz = m[kite + 2];
  for (let w = 0; w < 12 * count; w += 12) {
    let dx = kx - m[w + 9];
    let dy = ky - m[w + 10];
    let dz = kz - m[w + 11];
    const scale = 1 / Math.sqrt(dx * dx + dy * dy + dz * dz);
    dx *= scale;
    dy *= scale;
    dz *= scale;
    const zx = m[w + 6];
    const zy = m[w + 7];
    const zz = m[w + 8];
    const x = zy * dz - zz * dy;
    const y = zz * dx - zx * dz;
    const z = zx * dy - zy * dx;
    const c = zx * dx + zy * dy + zz * dz;
    const k = c < 0 ? (1 - c) / (x * x + y * y + z * z) : 1 / (1 + c);
    const yx = m[w + 3];
    const yy = m[w + 4];
    const yz = m[w + 5];
    const along = k * (x * yx + y * yy + z * yz);
    const ux = c * yx + y * yz - z * yy + along * x;
    const uy = c * yy + z * yx - x * yz + along * y;
    const uz = c * yz + x * yy - y * yx + along * z;
    m[w] = uy * dz - uz * dy;
    m[w + 1] = uz * dx - ux * dz;
    m[w + 2] = ux * dy - uy * dx;
    m[w + 3] = ux;
    m[w + 4] = uy;
    m[w + 5] = uz;
    m[w + 6] = dx;
    m[w + 7] = dy;
    m[w + 8] = dz;
  }
}

/** The same with +y toward rig space's +y. */
export function flatAimsUp(m: Float64Array, count: number): void {
  const kite = 12 * count + 9;
  const kx = m[kite];
  const ky = m[kite + 1];
  const kz = m[kite + 2];
  for (let w = 0; w < 12 * count; w += 12) {
    let dx = kx - m[w + 9];
    let dy = ky - m[w + 10];
    let dz = kz - m[w + 11];
    const scale = 1 / Math.sqrt(dx * dx + dy * dy + dz * dz);
    dx *= scale;
    dy *= scale;
    dz *= scale;
    const side = 1 / Math.sqrt(dx * dx + dz * dz);
    const sx = dz * side;
    const sz = -dx * side;
    m[w] = sx;
    m[w + 1] = 0;
    m[w + 2] = sz;
    m[w + 3] = dy * sz;
    m[w + 4] = dz * sx - dx * sz;
    m[w + 5] = -dy * sx;
    m[w + 6] = dx;
    m[w + 7] = dy;
    m[w + 8] = dz;
  }
}
