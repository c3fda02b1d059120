import { isTurn } from '../geometry/isTurn.ts';
import { POINT_INTS } from '../geometry/point.ts';
import { FRAME_INTS, INHERITS } from '../geometry/restFrame.ts';
import { LINK_RECORD } from './linkKind.ts';

const TARGET = LINK_RECORD.INTS;
const FRAME = TARGET + POINT_INTS;
const LENGTHS = FRAME + FRAME_INTS;
const TURN = INHERITS.turn;

const INDEX = 0x3fffffff;
const ZERO = 1e-9;
/** How far products of a few dozen turns are from one by rounding. */
const ROUNDING = 4e-15;
/** Down to this cosine the plain formula loses no digit to speak of. */
const BEHIND = -0.5;

/**
 * Spans at full weight with bones that have no size yet, under parents that have none: what span.ts does in general, over
 * plain locals. Returns false, with nothing written, where something is special. The turn is that of aimZ.ts.
 */
export function spanPlain(code: Int32Array, m: Float64Array, at: number): boolean {
  const self = code[at] & INDEX;
  const xx = m[self];
  const xy = m[self + 1];
  const xz = m[self + 2];
  const yx = m[self + 3];
  const yy = m[self + 4];
  const yz = m[self + 5];
  const zx = m[self + 6];
  const zy = m[self + 7];
  const zz = m[self + 8];
  const parent = code[at + FRAME] & INDEX;
  const volume =
    m[parent] * (m[parent + 4] * m[parent + 8] - m[parent + 5] * m[parent + 7]) +
    m[parent + 1] * (m[parent + 5] * m[parent + 6] - m[parent + 3] * m[parent + 8]) +
    m[parent + 2] * (m[parent + 3] * m[parent + 7] - m[parent + 4] * m[parent + 6]);
  if (!isTurn(m, self) || (code[at + FRAME + 1] !== TURN && Math.abs(Math.abs(volume) - 1) >= ROUNDING)) return false;

  const target = code[at + TARGET] & INDEX;
  const reach = m[code[at + TARGET + 1]];
  let dx = m[target + 9] + m[target + 6] * reach - m[self + 9];
  let dy = m[target + 10] + m[target + 7] * reach - m[self + 10];
  let dz = m[target + 11] + m[target + 8] * reach - m[self + 11];
  const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const nearness = 1 / distance;
  dx *= nearness;
  dy *= nearness;
  dz *= nearness;
  const c = zx * dx + zy * dy + zz * dz;
  if (!(distance >= ZERO && c >= BEHIND)) return false;

  const lengths = code[at + LENGTHS] & INDEX;
  const restLength = m[lengths];
  const ratio = Math.min(m[lengths + 3], Math.max(m[lengths + 2], distance / restLength));
  const along = (ratio * restLength) / m[lengths + 1];
  const across = m[lengths + 4] === 1 ? 1 / Math.sqrt(ratio) : 1;
  const vx = xx * dx + xy * dy + xz * dz;
  const vy = yx * dx + yy * dy + yz * dz;
  const k = 1 / (1 + c);
  const x = -k * vx * vy;
  const y = c + k * vx * vx;
  const wx = x * xx + y * yx - vy * zx;
  const wy = x * xy + y * yy - vy * zy;
  const wz = x * xz + y * yz - vy * zz;
  m[self] = (wy * dz - wz * dy) * across;
  m[self + 1] = (wz * dx - wx * dz) * across;
  m[self + 2] = (wx * dy - wy * dx) * across;
  m[self + 3] = wx * across;
  m[self + 4] = wy * across;
  m[self + 5] = wz * across;
  m[self + 6] = dx * along;
  m[self + 7] = dy * along;
  m[self + 8] = dz * along;
  return true;
}
