import { multiply, transform } from '../geometry/matrix.ts';
import { matrixOfQuaternion } from '../geometry/quaternion.ts';
import { FRAME_INTS, writeRestBase, writeRestFrame } from '../geometry/restFrame.ts';
import { turnByAngles } from '../pose/turnByAngles.ts';
import type { Machine, Run } from './machine.ts';

/** A record: own world, pose, frame (parent, inherits, rest), parent's length or NONE, driven channels or NONE, order. */
const FRAME = 2;
const TIP = FRAME + FRAME_INTS;
const DRIVEN = TIP + 1;
const ORDER = TIP + 2;
const INTS = TIP + 3;
export const NONE = -1;

/** Scratch. */
const OWN_FRAME = 0;
const TURN = 9;
const QUATERNION = 18;
const MOVE = 22;
const REST_BASE = 25;

/** Own pose of bones that inherit less than all, stand on their parent's tip or have driven channels. */
export const specialPoses: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) specialPose(machine, i);
  return end;
};

function specialPose(machine: Machine, at: number): void {
  const { code, memory: m, pose } = machine;
  const own = machine.poseAt + code[at + 1];
  writeRestFrame(code, m, at + FRAME, OWN_FRAME, TURN);
  if (code[at + TIP] === NONE) writeMovedBase(machine, at, own);
  else writeTipBase(code, m, at);
  m[QUATERNION] = pose[own + 3];
  m[QUATERNION + 1] = pose[own + 4];
  m[QUATERNION + 2] = pose[own + 5];
  m[QUATERNION + 3] = pose[own + 6];
  if (code[at + DRIVEN] !== NONE) turnByAngles(m, QUATERNION, code[at + DRIVEN] + 3, code[at + ORDER]);
  matrixOfQuaternion(m, QUATERNION, TURN);
  for (let i = 0; i < 3; i++) {
    m[TURN + i] *= pose[own + 7];
    m[TURN + 3 + i] *= pose[own + 8];
    m[TURN + 6 + i] *= pose[own + 9];
  }
  multiply(m, OWN_FRAME, TURN, code[at]);
}

function writeTipBase(code: Int32Array, m: Float64Array, at: number): void {
  const parent = code[at + FRAME];
  const base = code[at] + 9;
  const length = m[code[at + TIP]];
  for (let i = 0; i < 3; i++) m[base + i] = m[parent + 9 + i] + m[parent + 6 + i] * length;
}

function writeMovedBase(machine: Machine, at: number, own: number): void {
  const { code, memory: m, pose } = machine;
  const base = code[at] + 9;
  const driven = code[at + DRIVEN];
  for (let i = 0; i < 3; i++) m[MOVE + i] = pose[own + i] + (driven === NONE ? 0 : m[driven + i]);
  writeRestBase(code, m, at + FRAME, REST_BASE);
  transform(m, OWN_FRAME, MOVE, base);
  for (let i = 0; i < 3; i++) m[base + i] += m[REST_BASE + i];
}
