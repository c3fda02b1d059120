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
  quaternionOfTurn(m, from, full, spare);
  if (m[spare + 3] <= NEAR_HALF_TURN) chooseWay(m, spare);
  takePart(m, spare, weight);
  turnByQuaternion(m, from, spare);
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
