import type { Run } from './machine.ts';

/** A record: own world, parent's world, rest local (with ALIGNED where Q is none), pose. */
const INTS = 4;
/** A bit above any index. */
export const ALIGNED = 0x40000000;
const IS_ALIGNED = ALIGNED;
/**
 * Masking an index with this changes none, but tells an engine that adding a little to it cannot overflow: a sixth of the
 * time went into checking that. It is not imported, because engines do not fold what is.
 */
const INDEX = 0x3fffffff;

/**
 * Own pose of bones that take all of their parent, are free of its tip and have no driven channel:
 * base W(parent)·(t + Q·move), 3×3 part A(parent)·Q·R(turn)·S(size). Most bones of most poses are not posed, and many are
 * turned at rest as their parent is: both are seen to.
 *
 * It is one long loop over plain locals because it is most of the work of most rigs: a store to memory and a read
 * back between its steps costs as much as the arithmetic.
 */
export const ownPoses: Run = (machine, at, count) => {
  const { code, memory: m, pose, poseAt } = machine;
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) {
    const self = code[i] & INDEX;
    const parent = code[i + 1] & INDEX;
    const isAligned = (code[i + 2] & IS_ALIGNED) !== 0;
    const rest = code[i + 2] & INDEX;
    const own = (poseAt + code[i + 3]) & INDEX;

    const mx = pose[own];
    const my = pose[own + 1];
    const mz = pose[own + 2];
    let x = pose[own + 3];
    let y = pose[own + 4];
    let z = pose[own + 5];
    let w = pose[own + 6];
    const sx = pose[own + 7];
    const sy = pose[own + 8];
    const sz = pose[own + 9];
    let b0 = m[rest];
    let b1 = m[rest + 1];
    let b2 = m[rest + 2];
    if (isAligned) {
      b0 += mx;
      b1 += my;
      b2 += mz;
    } else {
      b0 += m[rest + 7] * mx + m[rest + 10] * my + m[rest + 13] * mz;
      b1 += m[rest + 8] * mx + m[rest + 11] * my + m[rest + 14] * mz;
      b2 += m[rest + 9] * mx + m[rest + 12] * my + m[rest + 15] * mz;
    }
    const p0 = m[parent];
    const p1 = m[parent + 1];
    const p2 = m[parent + 2];
    const p3 = m[parent + 3];
    const p4 = m[parent + 4];
    const p5 = m[parent + 5];
    const p6 = m[parent + 6];
    const p7 = m[parent + 7];
    const p8 = m[parent + 8];
    m[self + 9] = p0 * b0 + p3 * b1 + p6 * b2 + m[parent + 9];
    m[self + 10] = p1 * b0 + p4 * b1 + p7 * b2 + m[parent + 10];
    m[self + 11] = p2 * b0 + p5 * b1 + p8 * b2 + m[parent + 11];

    if (isAligned) {
      if (x === 0 && y === 0 && z === 0 && sx === 1 && sy === 1 && sz === 1) {
        m[self] = p0;
        m[self + 1] = p1;
        m[self + 2] = p2;
        m[self + 3] = p3;
        m[self + 4] = p4;
        m[self + 5] = p5;
        m[self + 6] = p6;
        m[self + 7] = p7;
        m[self + 8] = p8;
        continue;
      }
    } else {
      const rx = m[rest + 3];
      const ry = m[rest + 4];
      const rz = m[rest + 5];
      const rw = m[rest + 6];
      const tx = x;
      const ty = y;
      const tz = z;
      x = rw * tx + rx * w + ry * tz - rz * ty;
      y = rw * ty - rx * tz + ry * w + rz * tx;
      z = rw * tz + rx * ty - ry * tx + rz * w;
      w = rw * w - rx * tx - ry * ty - rz * tz;
    }
    const l0 = (1 - 2 * (y * y + z * z)) * sx;
    const l1 = 2 * (x * y + w * z) * sx;
    const l2 = 2 * (x * z - w * y) * sx;
    const l3 = 2 * (x * y - w * z) * sy;
    const l4 = (1 - 2 * (x * x + z * z)) * sy;
    const l5 = 2 * (y * z + w * x) * sy;
    const l6 = 2 * (x * z + w * y) * sz;
    const l7 = 2 * (y * z - w * x) * sz;
    const l8 = (1 - 2 * (x * x + y * y)) * sz;
    m[self] = p0 * l0 + p3 * l1 + p6 * l2;
    m[self + 1] = p1 * l0 + p4 * l1 + p7 * l2;
    m[self + 2] = p2 * l0 + p5 * l1 + p8 * l2;
    m[self + 3] = p0 * l3 + p3 * l4 + p6 * l5;
    m[self + 4] = p1 * l3 + p4 * l4 + p7 * l5;
    m[self + 5] = p2 * l3 + p5 * l4 + p8 * l5;
    m[self + 6] = p0 * l6 + p3 * l7 + p6 * l8;
    m[self + 7] = p1 * l6 + p4 * l7 + p7 * l8;
    m[self + 8] = p2 * l6 + p5 * l7 + p8 * l8;
  }
  return end;
};
