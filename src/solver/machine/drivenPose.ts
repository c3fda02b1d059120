import { turnByAngles } from '../pose/turnByAngles.ts';
import type { Run } from './machine.ts';
import { ownPoses } from './ownPose.ts';

/** A record: that of an own pose, driven channels, turn order. */
const POSE = 3;
const DRIVEN = 4;
const ORDER = 5;
const INTS = 6;

/** Scratch: a pose as it is packed. */
const PACKED = 0;

/** Own pose as in ownPose.ts, with driven channels: they are put into a pose of its own, which is posed in place of it. */
export const drivenPoses: Run = (machine, at, count) => {
  const { code, memory: m, pose, poseAt } = machine;
  const end = at + INTS * count;
  machine.pose = m;
  for (let i = at; i < end; i += INTS) {
    const own = poseAt + code[i + POSE];
    const driven = code[i + DRIVEN];
    m[PACKED] = pose[own] + m[driven];
    m[PACKED + 1] = pose[own + 1] + m[driven + 1];
    m[PACKED + 2] = pose[own + 2] + m[driven + 2];
    for (let k = 3; k < 10; k++) m[PACKED + k] = pose[own + k];
    turnByAngles(m, PACKED + 3, driven + 3, code[i + ORDER]);
    machine.poseAt = PACKED - code[i + POSE];
    ownPoses(machine, i, 1);
  }
  machine.pose = pose;
  machine.poseAt = poseAt;
  return end;
};
