import type { TurnOrder } from '../document/rig.ts';
import { turnQuaternion } from '../geometry/quaternion.ts';
import { cos, degToRad, sin } from '../number/index.ts';

const AXES = 'xyz';

/** A turn order in code: the numbers of its three axes, as digits to the base 3. */
export const orderCode = (order: TurnOrder = 'xyz'): number =>
  9 * AXES.indexOf(order[0]) + 3 * AXES.indexOf(order[1]) + AXES.indexOf(order[2]);

/**
 * Turns the quaternion at `to` further by angles about x, y and z in this order, each in the frame as turned so far:
 * for `xyz` by R = Rx·Ry·Rz. The angles are three doubles at `anglesDeg`, degrees.
 */
export function turnByAngles(m: Float64Array, to: number, anglesDeg: number, order: number): void {
  turnAboutAxis(m, to, anglesDeg, Math.floor(order / 9));
  turnAboutAxis(m, to, anglesDeg, Math.floor(order / 3) % 3);
  turnAboutAxis(m, to, anglesDeg, order % 3);
}

function turnAboutAxis(m: Float64Array, to: number, anglesDeg: number, axis: number): void {
  if (m[anglesDeg + axis] === 0) return;
  const halfRad = 0.5 * degToRad(m[anglesDeg + axis]);
  turnQuaternion(m, to, axis, sin(halfRad), cos(halfRad));
}
