import type { LimitLink } from '../document/rig.ts';
import { multiply, multiplyTransposed } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { writeRestFrame } from '../geometry/restFrame.ts';
import { slerp } from '../geometry/slerp.ts';
import { turnAboutZ } from '../geometry/turnAboutZ.ts';
import { towardPlus, twistRad } from '../geometry/twist.ts';
import { set } from '../geometry/vector.ts';
import { FLAT } from '../machine/flagBits.ts';
import { AXIS, FRAME, FRAME_ORIENTATION, FULL, ORIENTATION, PRODUCT, TURN } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { atan2, cos, degToRad, sin } from '../number/index.ts';

const PITCH = 2;
const TWIST = 4;
const CONE = 6;

/** Across +z under this, a direction is straight ahead or straight back. */
const STRAIGHT = 1e-9;

const NO_BOUNDS = [-Infinity, Infinity];

/** Least and most of yaw, pitch and twist, then the cone, radians. */
export function turnConstants({ yaw, pitch, twist, cone }: LimitLink): number[] {
  const rad = (bounds: readonly number[] = NO_BOUNDS) => bounds.map(degToRad);
  return [...rad(yaw), ...rad(pitch), ...rad(twist), cone === undefined ? Infinity : degToRad(cone)];
}

/** Keeps ORIENTATION within bounds in the rest frame in FRAME. */
export function limitTurn(machine: Machine, link: number, bounds: number, weight: number): void {
  const { memory: m, flags } = machine;
  if (orient(m, FRAME, FRAME_ORIENTATION)) flags[link] |= FLAT;
  multiplyTransposed(m, FRAME_ORIENTATION, ORIENTATION, TURN);
  const ownTwistRad = twistInFrame(m);
  const angleRad = clamp(m, bounds + TWIST, ownTwistRad);
  set(m, AXIS, m[TURN + 6], m[TURN + 7], m[TURN + 8]);
  const yawOrPitch = clampYawAndPitch(m, bounds);
  const cone = keepInCone(m, m[bounds + CONE]);
  if (!yawOrPitch && !cone && angleRad === ownTwistRad) return;
  writeSwing(m);
  multiply(m, FRAME_ORIENTATION, PRODUCT, FULL);
  turnAboutZ(m, FULL, angleRad);
  slerp(m, ORIENTATION, FULL, weight);
}

const clamp = (m: Float64Array, bounds: number, value: number): number =>
  Math.min(m[bounds + 1], Math.max(m[bounds], value));

/** The twist that is left when the swing of +z is taken off the turn in TURN. */
function twistInFrame(m: Float64Array): number {
  if (!isStraightBack(m, TURN + 6)) return twistRad(m, TURN, 2, 0);
  // Take off the half-turn about +y: rows x and z change sign.
  return towardPlus(atan2(m[TURN + 1] + m[TURN + 3], m[TURN + 4] - m[TURN]));
}

const across = (m: Float64Array, v: number): number => Math.sqrt(m[v] * m[v] + m[v + 1] * m[v + 1]);

const isStraightBack = (m: Float64Array, v: number): boolean => m[v + 2] < 0 && across(m, v) < STRAIGHT;

function clampYawAndPitch(m: Float64Array, bounds: number): boolean {
  const x = m[AXIS];
  const z = m[AXIS + 2];
  const ownYawRad = towardPlus(atan2(x, z));
  const ownPitchRad = atan2(m[AXIS + 1], Math.sqrt(x * x + z * z));
  const yawRad = clamp(m, bounds, ownYawRad);
  const pitchRad = clamp(m, bounds + PITCH, ownPitchRad);
  if (yawRad === ownYawRad && pitchRad === ownPitchRad) return false;
  set(m, AXIS, cos(pitchRad) * sin(yawRad), sin(pitchRad), cos(pitchRad) * cos(yawRad));
  return true;
}

/** From straight back, by the +x side. */
function keepInCone(m: Float64Array, coneRad: number): boolean {
  const side = across(m, AXIS);
  if (atan2(side, m[AXIS + 2]) <= coneRad) return false;
  const s = sin(coneRad);
  const x = side < STRAIGHT ? 1 : m[AXIS] / side;
  const y = side < STRAIGHT ? 0 : m[AXIS + 1] / side;
  set(m, AXIS, s * x, s * y, cos(coneRad));
  return true;
}

/** Writes the shortest turn from +z to the direction in AXIS to PRODUCT; straight back, half a turn about +y. */
function writeSwing(m: Float64Array): void {
  if (isStraightBack(m, AXIS)) {
    set(m, PRODUCT, -1, 0, 0);
    set(m, PRODUCT + 3, 0, 1, 0);
    set(m, PRODUCT + 6, 0, 0, -1);
    return;
  }
  const x = m[AXIS];
  const y = m[AXIS + 1];
  const z = m[AXIS + 2];
  const k = z < 0 ? (1 - z) / (x * x + y * y) : 1 / (1 + z);
  set(m, PRODUCT, z + k * y * y, -k * x * y, -x);
  set(m, PRODUCT + 3, -k * x * y, z + k * x * x, -y);
  set(m, PRODUCT + 6, x, y, z);
}

/** Radians between where the bone at `self` is turned and the nearest of its half-turns: of twist, of yaw, straight back. */
export function angleFromHalfTurn({ code, memory: m }: Machine, self: number, frame: number): number {
  writeRestFrame(code, m, frame);
  orient(m, FRAME, FRAME_ORIENTATION);
  orient(m, self, ORIENTATION);
  multiplyTransposed(m, FRAME_ORIENTATION, ORIENTATION, TURN);
  const yawRad = atan2(m[TURN + 6], m[TURN + 8]);
  return Math.PI - Math.max(Math.abs(twistInFrame(m)), Math.abs(yawRad));
}
