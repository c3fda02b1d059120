import { isTurn } from '../geometry/isTurn.ts';
import { LINK_RECORD } from './linkKind.ts';

const SOURCE = LINK_RECORD.INTS;
const OFFSET = SOURCE + 1;
const NONE = -1;

const INDEX = 0x3fffffff;

/**
 * Takes the source's turn over whole, for bones and sources without size or shear: what follow.ts does in general, over
 * plain locals. Returns false, with nothing written, for all others.
 */
export function followTurn(code: Int32Array, m: Float64Array, at: number): boolean {
  const self = code[at] & INDEX;
  const source = code[at + SOURCE] & INDEX;
  if (!(isTurn(m, self) && isTurn(m, source))) return false;
  const xx = m[source];
  const xy = m[source + 1];
  const xz = m[source + 2];
  const yx = m[source + 3];
  const yy = m[source + 4];
  const yz = m[source + 5];
  const zx = m[source + 6];
  const zy = m[source + 7];
  const zz = m[source + 8];
  if (code[at + OFFSET] === NONE) {
    m[self] = xx;
    m[self + 1] = xy;
    m[self + 2] = xz;
    m[self + 3] = yx;
    m[self + 4] = yy;
    m[self + 5] = yz;
    m[self + 6] = zx;
    m[self + 7] = zy;
    m[self + 8] = zz;
    return true;
  }
  const offset = code[at + OFFSET] & INDEX;
  for (let i = 0; i < 9; i += 3) {
    const x = m[offset + i];
    const y = m[offset + i + 1];
    const z = m[offset + i + 2];
    m[self + i] = xx * x + yx * y + zx * z;
    m[self + i + 1] = xy * x + yy * y + zy * z;
    m[self + i + 2] = xz * x + yz * y + zz * z;
  }
  return true;
}
