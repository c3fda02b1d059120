import type { Run } from './machine.ts';

/** A record: own world, parent's world, rest local, pose. */
const INTS = 4;
const INDEX = 0x3fffffff;

/**
 * Own pose, as in ownPose.ts, of bones that at rest are turned as their parent is: Q is none. One long loop over plain
 * locals for the same reason.
 */
export const alignedPoses: Run = (machine, at, count) => {
  const { code, memory: m, pose, poseAt } = machine;
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) {
    const self = code[i] & INDEX;
    const parent = code[i + 1] & INDEX;
    const rest = code[i + 2] & INDEX;
    const own = (poseAt + code[i + 3]) & INDEX;

    const x = pose[own + 3];
    const y = pose[own + 4];
    const z = pose[own + 5];
    const w = pose[own + 6];
    const sx = pose[own + 7];
    const sy = pose[own + 8];
    const sz = pose[own + 9];
    const l0 = (1 - 2 * (y * y + z * z)) * sx;
    const l1 = 2 * (x * y + w * z) * sx;
    const l2 = 2 * (x * z - w * y) * sx;
    const l3 = 2 * (x * y - w * z) * sy;
    const l4 = (1 - 2 * (x * x + z * z)) * sy;
    const l5 = 2 * (y * z + w * x) * sy;
    const l6 = 2 * (x * z + w * y) * sz;
    const l7 = 2 * (y * z - w * x) * sz;
    const l8 = (1 - 2 * (x * x + y * y)) * sz;
    const b0 = m[rest] + pose[own];
    const b1 = m[rest + 1] + pose[own + 1];
    const b2 = m[rest + 2] + pose[own + 2];

    const p0 = m[parent];
    const p1 = m[parent + 1];
    const p2 = m[parent + 2];
    const p3 = m[parent + 3];
    const p4 = m[parent + 4];
    const p5 = m[parent + 5];
    const p6 = m[parent + 6];
    const p7 = m[parent + 7];
    const p8 = m[parent + 8];
    m[self] = p0 * l0 + p3 * l1 + p6 * l2;
    m[self + 1] = p1 * l0 + p4 * l1 + p7 * l2;
    m[self + 2] = p2 * l0 + p5 * l1 + p8 * l2;
    m[self + 3] = p0 * l3 + p3 * l4 + p6 * l5;
    m[self + 4] = p1 * l3 + p4 * l4 + p7 * l5;
    m[self + 5] = p2 * l3 + p5 * l4 + p8 * l5;
    m[self + 6] = p0 * l6 + p3 * l7 + p6 * l8;
    m[self + 7] = p1 * l6 + p4 * l7 + p7 * l8;
    m[self + 8] = p2 * l6 + p5 * l7 + p8 * l8;
    m[self + 9] = p0 * b0 + p3 * b1 + p6 * b2 + m[parent + 9];
    m[self + 10] = p1 * b0 + p4 * b1 + p7 * b2 + m[parent + 10];
    m[self + 11] = p2 * b0 + p5 * b1 + p8 * b2 + m[parent + 11];
  }
  return end;
};
