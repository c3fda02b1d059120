import { atan2, cos, sin } from '../number/index.ts';
import { copyMatrix } from './matrix.ts';
import { makeUnit, quaternionOfTurn, turnByQuaternion } from './quaternion.ts';

const INDEX = 0x3fffffff;
/** |w| of a turn this close to a half-turn: 2e-9 rad off 180°, of which w is the half. */
const HALF_TURN = 1e-9;
/** The same of a quaternion up to 4 long. */
const NEAR_HALF_TURN = 4e-9;
/** A component of the axis up to this does not decide. */
const AXIS_LEAST = 1e-9;

/**
 * Turns the orientation at `from` towards the one at `full` by `weight` of the way, the shorter way round
 * (K. Shoemake, Animating rotation with quaternion curves, SIGGRAPH 1985; from memory). At a half-turn, where both
 * ways are as long, the axis whose first component is positive, as seen from `from`, decides. Uses four doubles at
 * `spare`.
 */
export function slerp(m: Float64Array, from: number, full: number, weight: number, spare: number): void {
  if (weight === 1) {
    copyMatrix(m, full, from);
    return;
  }
  if (slerpUpright(m, from, full, weight)) return;
  quaternionOfTurn(m, from, full, spare);
  if (m[spare + 3] <= NEAR_HALF_TURN) chooseWay(m, spare);
  takePart(m, spare, weight);
  turnByQuaternion(m, from, spare);
}

/**
 * The same for turns of which w is the largest part, the commonest, over plain locals: stores to memory and reads back
 * between the steps cost a third. Returns false, with nothing written, for all others.
 */
function slerpUpright(m: Float64Array, from: number, full: number, weight: number): boolean {
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
  const trace = a0 * b0 + a1 * b1 + a2 * b2 + (a3 * b3 + a4 * b4 + a5 * b5) + (a6 * b6 + a7 * b7 + a8 * b8);
  if (!(trace > 0)) return false;
  let x = a6 * b3 + a7 * b4 + a8 * b5 - (a3 * b6 + a4 * b7 + a5 * b8);
  let y = a0 * b6 + a1 * b7 + a2 * b8 - (a6 * b0 + a7 * b1 + a8 * b2);
  let z = a3 * b0 + a4 * b1 + a5 * b2 - (a0 * b3 + a1 * b4 + a2 * b5);
  const across = Math.sqrt(x * x + y * y + z * z);
  const halfRad = weight * atan2(across, 1 + trace);
  const scale = across === 0 ? 0 : sin(halfRad) / across;
  const w = cos(halfRad);
  x *= scale;
  y *= scale;
  z *= scale;
  const t0 = 1 - 2 * (y * y + z * z);
  const t1 = 2 * (x * y + w * z);
  const t2 = 2 * (x * z - w * y);
  const t3 = 2 * (x * y - w * z);
  const t4 = 1 - 2 * (x * x + z * z);
  const t5 = 2 * (y * z + w * x);
  const t6 = 2 * (x * z + w * y);
  const t7 = 2 * (y * z - w * x);
  const t8 = 1 - 2 * (x * x + y * y);
  m[a] = a0 * t0 + a3 * t1 + a6 * t2;
  m[a + 1] = a1 * t0 + a4 * t1 + a7 * t2;
  m[a + 2] = a2 * t0 + a5 * t1 + a8 * t2;
  m[a + 3] = a0 * t3 + a3 * t4 + a6 * t5;
  m[a + 4] = a1 * t3 + a4 * t4 + a7 * t5;
  m[a + 5] = a2 * t3 + a5 * t4 + a8 * t5;
  m[a + 6] = a0 * t6 + a3 * t7 + a6 * t8;
  m[a + 7] = a1 * t6 + a4 * t7 + a7 * t8;
  m[a + 8] = a2 * t6 + a5 * t7 + a8 * t8;
  return true;
}

/** Where the quaternion is that of a half-turn, takes of both the one that turns about the axis that decides. */
function chooseWay(m: Float64Array, q: number): void {
  makeUnit(m, q);
  if (m[q + 3] > HALF_TURN) return;
  for (let i = q; i < q + 3; i++) {
    if (m[i] > AXIS_LEAST) return;
    if (m[i] < -AXIS_LEAST) {
      for (let k = q; k < q + 4; k++) m[k] = -m[k];
      return;
    }
  }
}

/** Makes a quaternion of any length the unit one of `weight` of its angle. */
function takePart(m: Float64Array, quaternion: number, weight: number): void {
  const q = quaternion & INDEX;
  const x = m[q];
  const y = m[q + 1];
  const z = m[q + 2];
  const across = Math.sqrt(x * x + y * y + z * z);
  const halfRad = weight * atan2(across, m[q + 3]);
  const scale = across === 0 ? 0 : sin(halfRad) / across;
  m[q] = x * scale;
  m[q + 1] = y * scale;
  m[q + 2] = z * scale;
  m[q + 3] = cos(halfRad);
}
