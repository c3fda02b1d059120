import { multiply, transform } from '../geometry/matrix.ts';
import { matrixOfQuaternion } from '../geometry/quaternion.ts';
import { FRAME_INTS, writeRestBase, writeRestFrame } from '../geometry/restFrame.ts';
import { set } from '../geometry/vector.ts';
import { turnByAngles } from '../pose/turnByAngles.ts';
import { FRAME, QUATERNION, REST_BASE, TURN, VECTOR } from './layout.ts';
import type { Machine, Run } from './machine.ts';

/** A record: own world, pose, frame (parent, inherits, rest), parent's length or NONE, driven channels or NONE, order. */
const INTS = 5 + FRAME_INTS;
const FRAME_AT = 2;
const TIP = FRAME_AT + FRAME_INTS;
const DRIVEN = TIP + 1;
const ORDER = TIP + 2;
export const NONE = -1;

/** Own pose of bones that inherit less than all, stand on their parent's tip or have driven channels. */
export const specialPoses: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) specialPose(machine, i);
  return end;
};

function specialPose(machine: Machine, at: number): void {
  const { code, memory: m, pose } = machine;
  const own = machine.poseAt + code[at + 1];
  writeRestFrame(code, m, at + FRAME_AT);
  writeBase(machine, at, own);
  for (let i = 0; i < 4; i++) m[QUATERNION + i] = pose[own + 3 + i];
  if (code[at + DRIVEN] !== NONE) turnByAngles(m, QUATERNION, code[at + DRIVEN] + 3, code[at + ORDER]);
  matrixOfQuaternion(m, QUATERNION, TURN);
  for (let i = 0; i < 9; i++) m[TURN + i] *= pose[own + 7 + Math.floor(i / 3)];
  multiply(m, FRAME, TURN, code[at]);
}

function writeBase(machine: Machine, at: number, own: number): void {
  const { code, memory: m, pose } = machine;
  const base = code[at] + 9;
  const tip = code[at + TIP];
  if (tip !== NONE) {
    const parent = code[at + FRAME_AT];
    for (let i = 0; i < 3; i++) m[base + i] = m[parent + 9 + i] + m[parent + 6 + i] * m[tip];
    return;
  }
  set(m, VECTOR, pose[own], pose[own + 1], pose[own + 2]);
  const driven = code[at + DRIVEN];
  if (driven !== NONE) for (let i = 0; i < 3; i++) m[VECTOR + i] += m[driven + i];
  writeRestBase(code, m, at + FRAME_AT);
  transform(m, FRAME, VECTOR, base);
  for (let i = 0; i < 3; i++) m[base + i] += m[REST_BASE + i];
}
