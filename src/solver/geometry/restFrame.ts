import { cbrt } from '../number/index.ts';
import { determinant } from './determinant.ts';
import { multiply, transformPoint } from './matrix.ts';
import { orient } from './orient.ts';
import { cross, dot, subtract } from './vector.ts';

/** How a bone takes its parent's turning and size, in code. */
export const INHERITS = { all: 0, uniform: 1, turn: 2 } as const;
const ALL = INHERITS.all;
const TURN = INHERITS.turn;

/** A rest local among the constants: translation, quaternion, its matrix. */
export const REST_TURN = 3;
const MATRIX = 7;

/** A frame in code: the parent's world, how it inherits, the rest local. */
export const FRAME_INTS = 3;

/** Under this, ∛|det F| counts as zero. */
const ZERO = 1e-9;
/** How far products of a few dozen turns are from volume 1 by rounding. */
const ROUNDING = 4e-15;

/** Writes F·Q, the rest frame that stands at `at` of the code, to `to`. Uses nine doubles at `spare`. */
export function writeRestFrame(code: Int32Array, m: Float64Array, at: number, to: number, spare: number): void {
  const parent = code[at];
  const matrix = code[at + 2] + MATRIX;
  if (code[at + 1] === ALL) {
    multiply(m, parent, matrix, to);
    return;
  }
  orient(m, parent, spare);
  multiply(m, spare, matrix, to);
  if (code[at + 1] === TURN) return;
  const size = cbrt(Math.abs(determinant(m, parent)));
  for (let i = to; i < to + 9; i++) m[i] *= size;
}

/** g = ∛|det F| of the frame at `at` of the code. */
export function frameSize(code: Int32Array, m: Float64Array, at: number): number {
  if (code[at + 1] === TURN) return 1;
  const volume = Math.abs(determinant(m, code[at]));
  return Math.abs(volume - 1) < ROUNDING ? 1 : cbrt(volume);
}

/** Writes W(parent)·t, the base at rest, of the frame at `at` of the code. */
export function writeRestBase(code: Int32Array, m: Float64Array, at: number, to: number): void {
  transformPoint(m, code[at], code[at + 2], to);
}

/**
 * Writes (F·Q)⁻¹·(base − rest base) to `to`, by Cramer's rule, of three vectors and F·Q in memory. Returns false, and
 * writes nothing of use, where ∛|det F| is under 1e-9. Uses three doubles at `spare`.
 */
export function writeShift(
  m: Float64Array,
  frame: number,
  base: number,
  restBase: number,
  to: number,
  spare: number,
): boolean {
  const volume = determinant(m, frame);
  if (Math.abs(volume) < ZERO * ZERO * ZERO) return false;
  subtract(m, base, restBase, to);
  cross(m, frame + 3, frame + 6, spare);
  const x = dot(m, to, spare) / volume;
  cross(m, frame + 6, frame, spare);
  const y = dot(m, to, spare) / volume;
  cross(m, frame, frame + 3, spare);
  const z = dot(m, to, spare) / volume;
  m[to] = x;
  m[to + 1] = y;
  m[to + 2] = z;
  return true;
}
