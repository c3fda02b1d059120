import { PRODUCT, QUATERNION, TURN } from '../machine/layout.ts';
import { atan2, cos, sin } from '../number/index.ts';
import { copyMatrix, multiply, multiplyTransposed } from './matrix.ts';
import { matrixOfQuaternion, quaternionOfMatrix } from './quaternion.ts';

/** |w| of a turn this close to a half-turn: 2e-9 rad off 180°, of which w is the half. */
const HALF_TURN = 1e-9;

/**
 * Turns the orientation at `from` towards the one at `full` by `weight` of the way, the shorter way round
 * (K. Shoemake, Animating rotation with quaternion curves, SIGGRAPH 1985; from memory). At a half-turn, where both
 * ways are as long, the axis whose first component is positive, as seen from `from`, decides.
 */
export function slerp(m: Float64Array, from: number, full: number, weight: number): void {
  if (weight === 1) {
    copyMatrix(m, full, from);
    return;
  }
  multiplyTransposed(m, from, full, TURN);
  quaternionOfMatrix(m, TURN, QUATERNION);
  if (m[QUATERNION + 3] <= HALF_TURN) chooseWay(m);
  turnByPart(m, from, weight);
}

function chooseWay(m: Float64Array): void {
  for (let i = QUATERNION; i < QUATERNION + 3; i++) {
    if (m[i] > 1e-9) return;
    if (m[i] < -1e-9) {
      negate(m);
      return;
    }
  }
}

function negate(m: Float64Array): void {
  for (let i = QUATERNION; i < QUATERNION + 4; i++) m[i] = -m[i];
}

/** Turns the orientation by `weight` of the turn in QUATERNION. */
function turnByPart(m: Float64Array, orientation: number, weight: number): void {
  const x = m[QUATERNION];
  const y = m[QUATERNION + 1];
  const z = m[QUATERNION + 2];
  const sinHalf = Math.sqrt(x * x + y * y + z * z);
  if (sinHalf === 0) return;
  const halfRad = weight * atan2(sinHalf, m[QUATERNION + 3]);
  const scale = sin(halfRad) / sinHalf;
  m[QUATERNION] = x * scale;
  m[QUATERNION + 1] = y * scale;
  m[QUATERNION + 2] = z * scale;
  m[QUATERNION + 3] = cos(halfRad);
  turnByQuaternion(m, orientation);
}

/** Turns the orientation by QUATERNION, in its own frame. */
function turnByQuaternion(m: Float64Array, orientation: number): void {
  matrixOfQuaternion(m, QUATERNION, TURN);
  multiply(m, orientation, TURN, PRODUCT);
  copyMatrix(m, PRODUCT, orientation);
}

/** Turns the orientation about an axis of its own (a unit vector in memory). */
export function turnAbout(m: Float64Array, orientation: number, axis: number, angleRad: number): void {
  const s = sin(0.5 * angleRad);
  m[QUATERNION] = m[axis] * s;
  m[QUATERNION + 1] = m[axis + 1] * s;
  m[QUATERNION + 2] = m[axis + 2] * s;
  m[QUATERNION + 3] = cos(0.5 * angleRad);
  turnByQuaternion(m, orientation);
}
