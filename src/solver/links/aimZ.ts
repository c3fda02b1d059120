import { SHEAR } from '../machine/flagBits.ts';
import type { Run } from '../machine/machine.ts';
import { atan2, cos, sin } from '../number/index.ts';
import { aimOne } from './aimAny.ts';
import { AIM_RECORD } from './aimRecord.ts';

const { TARGET, INTS } = AIM_RECORD;
const INDEX = 0x3fffffff;
const ZERO = 1e-9;
const ROUNDING = 4e-15;
const SHEAR_LEAST = 1e-6;
/** Down to this cosine the plain formula loses no digit to speak of. */
const BEHIND = -0.5;

/**
 * Aims with +z and without up vector, the commonest, as one loop over plain locals: what takeApart, aimShortest and
 * putTogether do, for bones and targets that nothing is special about. All others are left to aimOne.
 *
 * With d the direction seen from the bone, the turn's matrix is c·1 + s·[v]× + k·v·vᵀ, v = z × d = (−d.y, d.x, 0).
 */
export const aimZ: Run = (machine, at, count) => {
  const { code, memory: m, flags } = machine;
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) {
    const weight = m[code[i + 1]];
    if (weight === 0) continue;
    const self = code[i] & INDEX;
    const target = code[i + TARGET] & INDEX;
    const reach = m[code[i + TARGET + 1]];
    let dx = m[target + 9] + m[target + 6] * reach - m[self + 9];
    let dy = m[target + 10] + m[target + 7] * reach - m[self + 10];
    let dz = m[target + 11] + m[target + 8] * reach - m[self + 11];
    const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const nearness = 1 / distance;
    dx *= nearness;
    dy *= nearness;
    dz *= nearness;

    let yx = m[self + 3];
    let yy = m[self + 4];
    let yz = m[self + 5];
    let zx = m[self + 6];
    let zy = m[self + 7];
    let zz = m[self + 8];
    let zSize = zx * zx + zy * zy + zz * zz;
    let ySize = yx * yx + yy * yy + yz * yz;
    let along = yx * zx + yy * zy + yz * zz;
    if (Math.abs(zSize - 1) < ROUNDING && Math.abs(ySize - 1) < ROUNDING && Math.abs(along) < ROUNDING) {
      zSize = 1;
      ySize = 1;
      along = 0;
    } else {
      zSize = Math.sqrt(zSize);
      const zScale = 1 / zSize;
      zx *= zScale;
      zy *= zScale;
      zz *= zScale;
      along *= zScale;
      yx -= along * zx;
      yy -= along * zy;
      yz -= along * zz;
      ySize = Math.sqrt(yx * yx + yy * yy + yz * yz);
      const yScale = 1 / ySize;
      yx *= yScale;
      yy *= yScale;
      yz *= yScale;
    }
    const cosine = zx * dx + zy * dy + zz * dz;
    if (!(distance >= ZERO && zSize >= ZERO && ySize >= ZERO && ySize >= 0.1 * Math.abs(along) && cosine >= BEHIND)) {
      aimOne(machine, i);
      continue;
    }
    const xx = yy * zz - yz * zy;
    const xy = yz * zx - yx * zz;
    const xz = yx * zy - yy * zx;
    const fx = m[self];
    const fy = m[self + 1];
    const fz = m[self + 2];
    const xSize = xx * fx + xy * fy + xz * fz;
    const most = SHEAR_LEAST * Math.max(Math.abs(xSize), ySize, zSize);
    if (
      Math.abs(along) > most ||
      Math.abs(yx * fx + yy * fy + yz * fz) > most ||
      Math.abs(zx * fx + zy * fy + zz * fz) > most
    ) {
      flags[code[i + 2]] |= SHEAR;
    }

    const vx = xx * dx + xy * dy + xz * dz;
    const vy = yx * dx + yy * dy + yz * dz;
    let c = cosine;
    let s = 1;
    let k = 1 / (1 + c);
    if (weight !== 1) {
      const sine = Math.sqrt(vx * vx + vy * vy);
      if (sine !== 0) {
        const angleRad = weight * atan2(sine, c);
        c = cos(angleRad);
        s = sin(angleRad) / sine;
        k = (s * s) / (1 + c);
        dx = s * (vx * xx + vy * yx) + c * zx;
        dy = s * (vx * xy + vy * yy) + c * zy;
        dz = s * (vx * xz + vy * yz) + c * zz;
      }
    }
    // The new y, the new z, and the new x as their cross product.
    const x = -k * vx * vy;
    const y = c + k * vx * vx;
    const z = -s * vy;
    const wx = x * xx + y * yx + z * zx;
    const wy = x * xy + y * yy + z * zy;
    const wz = x * xz + y * yz + z * zz;
    m[self] = (wy * dz - wz * dy) * xSize;
    m[self + 1] = (wz * dx - wx * dz) * xSize;
    m[self + 2] = (wx * dy - wy * dx) * xSize;
    m[self + 3] = wx * ySize;
    m[self + 4] = wy * ySize;
    m[self + 5] = wz * ySize;
    m[self + 6] = dx * zSize;
    m[self + 7] = dy * zSize;
    m[self + 8] = dz * zSize;
  }
  return end;
};
