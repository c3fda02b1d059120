import type { Quat, Rest, Vec3 } from '../document/rig.ts';

/** A rigid transform: turn (unit quaternion), then move to `base`. */
export interface Rigid {
  readonly base: Vec3;
  readonly turn: Quat;
}

export const NOWHERE: Rigid = { base: [0, 0, 0], turn: [0, 0, 0, 1] };

/** R0 = T(base)·R(turn), with the turn made a unit quaternion to the last bit. */
export function restOf(rest: Rest): Rigid {
  const [x, y, z, w] = rest.turn;
  const length = Math.sqrt(x * x + y * y + z * z + w * w);
  return { base: rest.base, turn: [x / length, y / length, z / length, w / length] };
}

/** from⁻¹·to. Two equal turns give exactly none. */
export function relative(from: Rigid, to: Rigid): Rigid {
  const back = conjugate(from.turn);
  const [x, y, z] = to.base;
  return {
    base: rotate(back, [x - from.base[0], y - from.base[1], z - from.base[2]]),
    turn: sameTurn(from.turn, to.turn) ? NOWHERE.turn : product(back, to.turn),
  };
}

const sameTurn = (a: Quat, b: Quat): boolean =>
  a.every((part, i) => part === b[i]) || a.every((part, i) => part === -b[i]);

const conjugate = ([x, y, z, w]: Quat): Quat => [-x, -y, -z, w];

function product([ax, ay, az, aw]: Quat, [bx, by, bz, bw]: Quat): Quat {
  return [
    aw * bx + ax * bw + ay * bz - az * by,
    aw * by - ax * bz + ay * bw + az * bx,
    aw * bz + ax * by - ay * bx + az * bw,
    aw * bw - ax * bx - ay * by - az * bz,
  ];
}

function rotate(q: Quat, [x, y, z]: Vec3): Vec3 {
  const m = matrixOf(q);
  return [m[0] * x + m[3] * y + m[6] * z, m[1] * x + m[4] * y + m[7] * z, m[2] * x + m[5] * y + m[8] * z];
}

/** Three columns. */
export function matrixOf([x, y, z, w]: Quat): number[] {
  return [
    1 - 2 * (y * y + z * z),
    2 * (x * y + w * z),
    2 * (x * z - w * y),
    2 * (x * y - w * z),
    1 - 2 * (x * x + z * z),
    2 * (y * z + w * x),
    2 * (x * z + w * y),
    2 * (y * z - w * x),
    1 - 2 * (x * x + y * y),
  ];
}
