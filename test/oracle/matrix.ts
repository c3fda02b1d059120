/** 3×3 matrices as three columns. A rotation is one of these too. */
import { add, cross, dot, scale, unitX, unitY, unitZ, type Vector } from './vector.ts';

export interface Matrix {
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
}

export const identity: Matrix = { x: unitX, y: unitY, z: unitZ };

export const apply = (m: Matrix, v: Vector): Vector => add(add(scale(m.x, v[0]), scale(m.y, v[1])), scale(m.z, v[2]));

export const product = (...factors: Matrix[]): Matrix =>
  factors.reduce((left, right) => ({ x: apply(left, right.x), y: apply(left, right.y), z: apply(left, right.z) }));

export const times = (m: Matrix, by: number): Matrix => ({ x: scale(m.x, by), y: scale(m.y, by), z: scale(m.z, by) });

export const transposed = (m: Matrix): Matrix => ({
  x: [m.x[0], m.y[0], m.z[0]],
  y: [m.x[1], m.y[1], m.z[1]],
  z: [m.x[2], m.y[2], m.z[2]],
});

export const determinant = (m: Matrix): number => dot(m.x, cross(m.y, m.z));

/** Rows of the inverse are the cross products of the columns over the determinant. */
export const inverse = (m: Matrix): Matrix => {
  const rows = { x: cross(m.y, m.z), y: cross(m.z, m.x), z: cross(m.x, m.y) };
  return times(transposed(rows), 1 / determinant(m));
};

export const diagonal = (s: Vector): Matrix => ({
  x: scale(unitX, s[0]),
  y: scale(unitY, s[1]),
  z: scale(unitZ, s[2]),
});
