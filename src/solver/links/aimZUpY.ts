import { slerp } from '../geometry/slerp.ts';
import { set } from '../geometry/vector.ts';
import { SHEAR } from '../machine/flagBits.ts';
import type { Run } from '../machine/machine.ts';
import { aimOne } from './aimAny.ts';
import { AIM_RECORD } from './aimRecord.ts';
import { UP_KINDS } from './upVector.ts';

const { TARGET, UP, INTS } = AIM_RECORD;
/** Scratch. */
const FULL = 0;
const SPARE = 9;

const { POINT, BONE_AXIS, BONE_Y, BONE_Z } = UP_KINDS;
const INDEX = 0x3fffffff;
const ZERO = 1e-9;
const ROUNDING = 4e-15;
/** Squares of up directions under this are left to aimOne: metres, or what flat bones leave. */
const UP_SQUARE_LEAST = 1e-10;
const SHEAR_LEAST = 1e-6;
/** Down to this part of its length, what of the up direction lies across the aim loses no digit to speak of. */
const ACROSS_LEAST = 0.1;

/**
 * Aims with +z and with +y toward a point, a direction or a bone's +y or +z, the commonest up vectors, as one loop over plain locals: what
 * takeApart, writeRolled and putTogether do, for bones, targets and up directions that nothing is special about, at full
 * weight. All others are left to aimOne. Of the old orientation only sizes and shear are wanted, so it is not worked out.
 */
export const aimZUpY: Run = (machine, at, count) => {
  const { code, memory: m, flags } = machine;
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) {
    const weight = m[code[i + 1]];
    if (weight === 0) continue;
    const upKind = code[i + UP];
    const self = code[i] & INDEX;
    const px = m[self + 9];
    const py = m[self + 10];
    const pz = m[self + 11];
    const target = code[i + TARGET] & INDEX;
    const reach = m[code[i + TARGET + 1]];
    let dx = m[target + 9] + m[target + 6] * reach - px;
    let dy = m[target + 10] + m[target + 7] * reach - py;
    let dz = m[target + 11] + m[target + 8] * reach - pz;
    const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const nearness = 1 / distance;
    dx *= nearness;
    dy *= nearness;
    dz *= nearness;

    const by = code[i + UP + 1] & INDEX;
    let ux = m[by];
    let uy = m[by + 1];
    let uz = m[by + 2];
    if (upKind === POINT) {
      const along = m[code[i + UP + 2]];
      ux = m[by + 9] + m[by + 6] * along - px;
      uy = m[by + 10] + m[by + 7] * along - py;
      uz = m[by + 11] + m[by + 8] * along - pz;
    } else if (upKind === BONE_Z) {
      ux = m[by + 6];
      uy = m[by + 7];
      uz = m[by + 8];
    } else if (upKind === BONE_Y) {
      // The part of the second column across the third, times the third's square length.
      const ox = m[by + 6];
      const oy = m[by + 7];
      const oz = m[by + 8];
      const square = ox * ox + oy * oy + oz * oz;
      const along = m[by + 3] * ox + m[by + 4] * oy + m[by + 5] * oz;
      ux = m[by + 3] * square - along * ox;
      uy = m[by + 4] * square - along * oy;
      uz = m[by + 5] * square - along * oz;
    }
    const upSquare = ux * ux + uy * uy + uz * uz;
    const upAlong = ux * dx + uy * dy + uz * dz;
    ux -= upAlong * dx;
    uy -= upAlong * dy;
    uz -= upAlong * dz;
    const acrossSquare = ux * ux + uy * uy + uz * uz;

    const fx = m[self];
    const fy = m[self + 1];
    const fz = m[self + 2];
    const yx = m[self + 3];
    const yy = m[self + 4];
    const yz = m[self + 5];
    const zx = m[self + 6];
    const zy = m[self + 7];
    const zz = m[self + 8];
    const zSquare = zx * zx + zy * zy + zz * zz;
    const ySquare = yx * yx + yy * yy + yz * yz;
    const volume = fx * (yy * zz - yz * zy) + fy * (yz * zx - yx * zz) + fz * (yx * zy - yy * zx);
    let along = yx * zx + yy * zy + yz * zz;
    let zShear = fx * zx + fy * zy + fz * zz;
    let yShear = fx * yx + fy * yy + fz * yz;
    let xSize = volume;
    let ySize = 1;
    let zSize = 1;
    if (!(Math.abs(zSquare - 1) < ROUNDING && Math.abs(ySquare - 1) < ROUNDING && Math.abs(along) < ROUNDING)) {
      zSize = Math.sqrt(zSquare);
      along /= zSize;
      zShear /= zSize;
      ySize = Math.sqrt(ySquare - along * along);
      yShear = (yShear - along * zShear) / ySize;
      xSize = volume / (ySize * zSize);
    }
    const isPlain = distance >= ZERO && zSize >= ZERO && ySize >= ZERO && ySize > Math.abs(along);
    const isUpPlain =
      upKind !== BONE_AXIS && upSquare >= UP_SQUARE_LEAST && acrossSquare >= ACROSS_LEAST * ACROSS_LEAST * upSquare;
    const isTurn =
      zSize === 1 &&
      ySize === 1 &&
      Math.abs(volume - 1) < ROUNDING &&
      Math.abs(zShear) < ROUNDING &&
      Math.abs(yShear) < ROUNDING;
    if (!(isPlain && isUpPlain && (weight === 1 || isTurn))) {
      aimOne(machine, i);
      continue;
    }
    const most = SHEAR_LEAST * Math.max(Math.abs(xSize), ySize, zSize);
    if (Math.abs(along) > most || Math.abs(yShear) > most || Math.abs(zShear) > most) flags[code[i + 2]] |= SHEAR;

    const across = 1 / Math.sqrt(acrossSquare);
    ux *= across;
    uy *= across;
    uz *= across;
    if (weight !== 1) {
      set(m, FULL, uy * dz - uz * dy, uz * dx - ux * dz, ux * dy - uy * dx);
      set(m, FULL + 3, ux, uy, uz);
      set(m, FULL + 6, dx, dy, dz);
      slerp(m, self, FULL, weight, SPARE);
      continue;
    }
    m[self] = (uy * dz - uz * dy) * xSize;
    m[self + 1] = (uz * dx - ux * dz) * xSize;
    m[self + 2] = (ux * dy - uy * dx) * xSize;
    m[self + 3] = ux * ySize;
    m[self + 4] = uy * ySize;
    m[self + 5] = uz * ySize;
    m[self + 6] = dx * zSize;
    m[self + 7] = dy * zSize;
    m[self + 8] = dz * zSize;
  }
  return end;
};
