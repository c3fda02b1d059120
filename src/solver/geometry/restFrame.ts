import { FRAME, FRAME_ORIENTATION, REST_BASE, VECTOR } from '../machine/layout.ts';
import { cbrt } from '../number/index.ts';
import { determinant, multiply, transformPoint } from './matrix.ts';
import { orient } from './orient.ts';
import { cross, dot, subtract, ZERO } from './vector.ts';

/** How a bone takes its parent's turning and size, in code. */
export const INHERITS = { all: 0, uniform: 1, turn: 2 } as const;

/** Where the parts of a bone's rest local lie among the constants: translation, quaternion, its matrix. */
export const REST_TURN = 3;
export const REST_MATRIX = 7;

/** A frame in code: the parent's world, how it inherits, the rest local. */
export const FRAME_INTS = 3;

/** Writes F·Q of the frame at `at` of the code to FRAME. */
export function writeRestFrame(code: Int32Array, m: Float64Array, at: number): void {
  const parent = code[at];
  const matrix = code[at + 2] + REST_MATRIX;
  if (code[at + 1] === INHERITS.all) {
    multiply(m, parent, matrix, FRAME);
    return;
  }
  orient(m, parent, FRAME_ORIENTATION);
  multiply(m, FRAME_ORIENTATION, matrix, FRAME);
  if (code[at + 1] === INHERITS.turn) return;
  const size = cbrt(Math.abs(determinant(m, parent)));
  for (let i = FRAME; i < FRAME + 9; i++) m[i] *= size;
}

/** g = ∛|det F| of the frame at `at` of the code. */
export function frameSize(code: Int32Array, m: Float64Array, at: number): number {
  return code[at + 1] === INHERITS.turn ? 1 : cbrt(Math.abs(determinant(m, code[at])));
}

/** Writes W(parent)·t to REST_BASE. */
export function writeRestBase(code: Int32Array, m: Float64Array, at: number): void {
  transformPoint(m, code[at], code[at + 2], REST_BASE);
}

/**
 * Writes (F·Q)⁻¹·(base − rest base) to `to`, by Cramer's rule, for a base of three doubles; FRAME and REST_BASE are
 * written already. Returns false, and writes nothing, where ∛|det F| is under 1e-9.
 */
export function writeShift(m: Float64Array, base: number, to: number): boolean {
  const volume = determinant(m, FRAME);
  if (Math.abs(volume) < ZERO * ZERO * ZERO) return false;
  subtract(m, base, REST_BASE, to);
  cross(m, FRAME + 3, FRAME + 6, VECTOR);
  const x = dot(m, to, VECTOR) / volume;
  cross(m, FRAME + 6, FRAME, VECTOR);
  const y = dot(m, to, VECTOR) / volume;
  cross(m, FRAME, FRAME + 3, VECTOR);
  const z = dot(m, to, VECTOR) / volume;
  m[to] = x;
  m[to + 1] = y;
  m[to + 2] = z;
  return true;
}
