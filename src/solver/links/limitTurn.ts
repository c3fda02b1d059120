import type { LimitLink } from '../document/rig.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { copyMatrix, multiply, multiplyTransposed } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { slerp } from '../geometry/slerp.ts';
import { turnAboutZ } from '../geometry/turnAbout.ts';
import { towardPlus, writeTwist } from '../geometry/twist.ts';
import { set } from '../geometry/vector.ts';
import { FLAT } from '../machine/flagBits.ts';
import { atan2, cos, degToRad, sin } from '../number/index.ts';
import { insideConstants, isWellInside } from './limitInside.ts';

/** The constants: bounds that tell at once what is well inside, then least and most of yaw, pitch and twist, then the cone. */
const BOUNDS = 9;
const YAW = BOUNDS;
const PITCH = BOUNDS + 2;
const TWIST = BOUNDS + 4;
const CONE = BOUNDS + 6;

/** Across +z under this, a direction is straight ahead or straight back. */
const STRAIGHT = 1e-9;
const Z = 2;

/** Where in `spare` its scratch lies. */
const FRAME = 0;
const TURN = 9;
const AIM = 18;
const SWING = 21;
const FULL = 30;
const OWN_TWIST = 39;

export const turnConstants = (link: LimitLink): number[] => [...insideConstants(link), ...boundsRad(link)];

function boundsRad({ yaw, pitch, twist, cone }: LimitLink): number[] {
  const rad = (bounds: readonly number[] = [-Infinity, Infinity]) => bounds.map(degToRad);
  return [...rad(yaw), ...rad(pitch), ...rad(twist), cone === undefined ? Infinity : degToRad(cone)];
}

/** Keeps the orientation at `own` within bounds in the rest frame at `frame`. Uses 43 doubles at `spare`. */
export function limitTurn(
  m: Float64Array,
  flags: Int32Array,
  link: number,
  own: number,
  frame: number,
  bounds: number,
  weight: number,
  spare: number,
): void {
  if (isTurn(m, frame)) copyMatrix(m, frame, spare + FRAME);
  else if (orient(m, frame, spare + FRAME)) flags[link] |= FLAT;
  multiplyTransposed(m, spare + FRAME, own, spare + TURN);
  if (isWellInside(m, spare + TURN, bounds)) return;
  writeOwnTwist(m, own, spare);
  const twistRad = clamp(m, bounds + TWIST, m[spare + OWN_TWIST]);
  const aim = spare + AIM;
  set(m, aim, m[spare + TURN + 6], m[spare + TURN + 7], m[spare + TURN + 8]);
  const aside = clampYawAndPitch(m, bounds, aim);
  const cone = keepInCone(m, m[bounds + CONE], aim);
  if (!aside && !cone && twistRad === m[spare + OWN_TWIST]) return;
  writeSwing(m, aim, spare + SWING);
  multiply(m, spare + FRAME, spare + SWING, spare + FULL);
  turnAboutZ(m, spare + FULL, twistRad);
  slerp(m, own, spare + FULL, weight, spare);
}

const clamp = (m: Float64Array, bounds: number, value: number): number =>
  Math.min(m[bounds + 1], Math.max(m[bounds], value));

/** The twist that is left when the swing of +z is taken off. */
function writeOwnTwist(m: Float64Array, own: number, spare: number): void {
  const turn = spare + TURN;
  if (!isStraightBack(m, turn + 6)) {
    writeTwist(m, spare + FRAME, own, Z, 0, spare + OWN_TWIST);
    return;
  }
  // Take off the half-turn about +y: rows x and z change sign.
  m[spare + OWN_TWIST] = towardPlus(atan2(m[turn + 1] + m[turn + 3], m[turn + 4] - m[turn]));
}

const across = (m: Float64Array, v: number): number => Math.sqrt(m[v] * m[v] + m[v + 1] * m[v + 1]);

const isStraightBack = (m: Float64Array, v: number): boolean => m[v + 2] < 0 && across(m, v) < STRAIGHT;

function clampYawAndPitch(m: Float64Array, bounds: number, aim: number): boolean {
  const x = m[aim];
  const z = m[aim + 2];
  const ownYawRad = towardPlus(atan2(x, z));
  const ownPitchRad = atan2(m[aim + 1], Math.sqrt(x * x + z * z));
  const yawRad = clamp(m, bounds + YAW, ownYawRad);
  const pitchRad = clamp(m, bounds + PITCH, ownPitchRad);
  if (yawRad === ownYawRad && pitchRad === ownPitchRad) return false;
  set(m, aim, cos(pitchRad) * sin(yawRad), sin(pitchRad), cos(pitchRad) * cos(yawRad));
  return true;
}

/** From straight back, by the +x side. */
function keepInCone(m: Float64Array, coneRad: number, aim: number): boolean {
  const side = across(m, aim);
  if (atan2(side, m[aim + 2]) <= coneRad) return false;
  const s = sin(coneRad);
  const x = side < STRAIGHT ? 1 : m[aim] / side;
  const y = side < STRAIGHT ? 0 : m[aim + 1] / side;
  set(m, aim, s * x, s * y, cos(coneRad));
  return true;
}

/** Writes the shortest turn from +z to a direction; straight back, half a turn about +y. */
function writeSwing(m: Float64Array, aim: number, to: number): void {
  if (isStraightBack(m, aim)) {
    set(m, to, -1, 0, 0);
    set(m, to + 3, 0, 1, 0);
    set(m, to + 6, 0, 0, -1);
    return;
  }
  const x = m[aim];
  const y = m[aim + 1];
  const z = m[aim + 2];
  const k = z < 0 ? (1 - z) / (x * x + y * y) : 1 / (1 + z);
  set(m, to, z + k * y * y, -k * x * y, -x);
  set(m, to + 3, -k * x * y, z + k * x * x, -y);
  set(m, to + 6, x, y, z);
}

/** Radians between where the bone at `self` is turned and the nearest of its half-turns: of twist, of yaw, straight back. */
export function angleFromHalfTurn(m: Float64Array, self: number, frame: number, spare: number): number {
  const own = spare + FULL;
  orient(m, frame, spare + FRAME);
  orient(m, self, own);
  multiplyTransposed(m, spare + FRAME, own, spare + TURN);
  const yawRad = atan2(m[spare + TURN + 6], m[spare + TURN + 8]);
  writeOwnTwist(m, own, spare);
  return Math.PI - Math.max(Math.abs(m[spare + OWN_TWIST]), Math.abs(yawRad));
}
