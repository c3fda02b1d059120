import type { TurnOrder } from '../document/rig.ts';
import { turnQuaternion } from '../geometry/quaternion.ts';
import { cos, degToRad, sin } from '../number/index.ts';

const AXES = 'xyz';

/** A turn order in code: the numbers of its three axes, two bits each. */
export const orderCode = (order: TurnOrder = 'xyz'): number =>
  16 * AXES.indexOf(order[0]) + 4 * AXES.indexOf(order[1]) + AXES.indexOf(order[2]);

/**
 * Turns the quaternion at `to` further by angles about x, y and z in this order, each in the frame as turned so far:
 * for `xyz` by R = Rx·Ry·Rz. The angles are three doubles at `anglesDeg`, degrees.
 */
export function turnByAngles(m: Float64Array, to: number, anglesDeg: number, order: number): void {
  if (m[anglesDeg] === 0 && m[anglesDeg + 1] === 0 && m[anglesDeg + 2] === 0) return;
  turnAboutAxis(m, to, anglesDeg, order >> 4);
  turnAboutAxis(m, to, anglesDeg, (order >> 2) & 3);
  turnAboutAxis(m, to, anglesDeg, order & 3);
}

function turnAboutAxis(m: Float64Array, to: number, anglesDeg: number, axis: number): void {
  if (m[anglesDeg + axis] === 0) return;
  const halfRad = 0.5 * degToRad(m[anglesDeg + axis]);
  turnQuaternion(m, to, axis, sin(halfRad), cos(halfRad));
}
