import { isTurn } from '../geometry/isTurn.ts';
import { FRAME_INTS, INHERITS } from '../geometry/restFrame.ts';
import { isAxisWellInside } from './limitInside.ts';
import { LINK_RECORD } from './linkKind.ts';

const FRAME = LINK_RECORD.INTS;
const MOVE = FRAME + FRAME_INTS;
const TURN = MOVE + 1;
const NONE = -1;
const ALL = INHERITS.all;
/** Where the matrix of a rest local starts. */
const MATRIX = 7;

const INDEX = 0x3fffffff;

/**
 * Whether a bone without size or shear, under such a parent, is turned well inside its limits, and nothing else is limited:
 * the commonest case, in which there is nothing to do. False where that is not plain.
 */
export function isPlainlyInside(code: Int32Array, m: Float64Array, at: number): boolean {
  if (code[at + FRAME + 1] !== ALL || code[at + MOVE] !== NONE) return false;
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
  const p0 = m[parent];
  const p1 = m[parent + 1];
  const p2 = m[parent + 2];
  const p3 = m[parent + 3];
  const p4 = m[parent + 4];
  const p5 = m[parent + 5];
  const p6 = m[parent + 6];
  const p7 = m[parent + 7];
  const p8 = m[parent + 8];
  if (!(isTurn(m, self) && isTurn(m, parent))) return false;

  // Column by column of the rest frame, parent times rest; of its transpose times own, what the bounds ask for.
  const rest = (code[at + FRAME + 2] + MATRIX) & INDEX;
  let a = m[rest];
  let b = m[rest + 1];
  let c = m[rest + 2];
  let fx = p0 * a + p3 * b + p6 * c;
  let fy = p1 * a + p4 * b + p7 * c;
  let fz = p2 * a + p5 * b + p8 * c;
  const x = fx * zx + fy * zy + fz * zz;
  let cosine = fx * xx + fy * xy + fz * xz;
  let sine = -(fx * yx + fy * yy + fz * yz);
  a = m[rest + 3];
  b = m[rest + 4];
  c = m[rest + 5];
  fx = p0 * a + p3 * b + p6 * c;
  fy = p1 * a + p4 * b + p7 * c;
  fz = p2 * a + p5 * b + p8 * c;
  const y = fx * zx + fy * zy + fz * zz;
  cosine += fx * yx + fy * yy + fz * yz;
  sine += fx * xx + fy * xy + fz * xz;
  a = m[rest + 6];
  b = m[rest + 7];
  c = m[rest + 8];
  fx = p0 * a + p3 * b + p6 * c;
  fy = p1 * a + p4 * b + p7 * c;
  fz = p2 * a + p5 * b + p8 * c;
  const z = fx * zx + fy * zy + fz * zz;
  return isAxisWellInside(m, code[at + TURN], x, y, z, cosine, sine);
}
