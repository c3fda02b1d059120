/** Rotations as matrices, made from and read as other forms. */
import type { Quat, TurnOrder } from '../../src/solver/document/rig.ts';
import { identity, type Matrix, product } from './matrix.ts';
import { add, cross, dot, scale, size, unit, unitX, unitY, unitZ, type Vector } from './vector.ts';

export const degrees = (rad: number): number => (rad * 180) / Math.PI;
export const radians = (deg: number): number => (deg * Math.PI) / 180;

/** Rodrigues' formula, one column at a time. */
export function turnAbout(axis: Vector, angleRad: number): Matrix {
  const cos = Math.cos(angleRad);
  const sin = Math.sin(angleRad);
  const turned = (v: Vector): Vector =>
    add(add(scale(v, cos), scale(cross(axis, v), sin)), scale(axis, dot(axis, v) * (1 - cos)));
  return { x: turned(unitX), y: turned(unitY), z: turned(unitZ) };
}

export function fromQuaternion(q: Quat): Matrix {
  const v: Vector = [q[0], q[1], q[2]];
  if (size(v) === 0) return identity;
  return turnAbout(unit(v), 2 * Math.atan2(size(v), q[3]));
}

/** The quaternion [x, y, z, w] of a rotation, by its largest component; w is not negative. */
export function toQuaternion(r: Matrix): Quat {
  const squares = [
    1 + r.x[0] - r.y[1] - r.z[2],
    1 - r.x[0] + r.y[1] - r.z[2],
    1 - r.x[0] - r.y[1] + r.z[2],
    1 + r.x[0] + r.y[1] + r.z[2],
  ];
  const xy = r.x[1] + r.y[0];
  const xz = r.x[2] + r.z[0];
  const yz = r.y[2] + r.z[1];
  const xw = r.y[2] - r.z[1];
  const yw = r.z[0] - r.x[2];
  const zw = r.x[1] - r.y[0];
  const largest = squares.indexOf(Math.max(...squares));
  const rows: Quat[] = [
    [squares[0], xy, xz, xw],
    [xy, squares[1], yz, yw],
    [xz, yz, squares[2], zw],
    [xw, yw, zw, squares[3]],
  ];
  const row = rows[largest];
  const norm = Math.hypot(...row) * (row[3] < 0 ? -1 : 1);
  return [row[0] / norm, row[1] / norm, row[2] / norm, row[3] / norm];
}

/** The angles belong to x, y, z; the order says how the three turns are multiplied, left to right. */
export function fromAnglesDeg(anglesDeg: Vector, order: TurnOrder): Matrix {
  const about = {
    x: turnAbout(unitX, radians(anglesDeg[0])),
    y: turnAbout(unitY, radians(anglesDeg[1])),
    z: turnAbout(unitZ, radians(anglesDeg[2])),
  };
  return product(...[...order].map((letter) => about[letter as 'x' | 'y' | 'z']));
}

/** The shortest rotation taking one unit vector onto another; the two are not opposite. */
export function shortestTurn(from: Vector, onto: Vector): Matrix {
  const n = cross(from, onto);
  if (size(n) === 0) return identity;
  return turnAbout(unit(n), Math.atan2(size(n), dot(from, onto)));
}

/** "In (−180°, 180°], where within 1e-9 rad of −180° counts as 180°." */
export function wrappedRad(angleRad: number): number {
  const inTurn = angleRad - 2 * Math.PI * Math.round(angleRad / (2 * Math.PI));
  return inTurn <= -Math.PI + 1e-9 ? Math.PI : inTurn;
}
