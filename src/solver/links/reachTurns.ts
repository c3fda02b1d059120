import { copyMatrix, multiply, multiplyByTransposed, transform, writeIdentity } from '../geometry/matrix.ts';
import { slerp } from '../geometry/slerp.ts';
import { copyVector, cross, perpendicular, set, subtract, unitise } from '../geometry/vector.ts';
import {
  DIRECTION,
  GOAL,
  HINGE,
  LOWER,
  LOWER_TURN,
  ORIENTATION,
  PRODUCT,
  SIDE,
  UPPER,
  UPPER_TURN,
  VECTOR,
} from '../machine/layout.ts';

/** This near a bound, as part of both lengths, the elbow lies in line. */
const IN_LINE = 1e-12;

/** A frame under way: [bone, hinge, bone × hinge], now and as it shall be. */
const NOW = GOAL;
const THEN = PRODUCT;

/**
 * Writes the turns of the upper and the lower bone that bring the tip to the target, with the law of cosines for the
 * elbow (Euclid, Elements II.12–13). UPPER and LOWER are the bones' directions, HINGE their hinge, DIRECTION leads to
 * the target, SIDE to the elbow's side.
 */
export function writeTurns(m: Float64Array, upperLength: number, lowerLength: number, distance: number): void {
  const sum = upperLength + lowerLength;
  const difference = Math.abs(upperLength - lowerLength);
  const reached = Math.min(sum, Math.max(difference, distance));
  const tooLong = sum - reached;
  const tooShort = reached - difference;
  if (Math.min(tooLong, tooShort) <= IN_LINE * sum) {
    writeInLine(m, tooLong <= tooShort, upperLength >= lowerLength);
    return;
  }
  const along = (upperLength * upperLength + reached * reached - lowerLength * lowerLength) / (2 * reached);
  const aside = elbowHeight(upperLength, lowerLength, reached);
  writeFrameTurn(m, UPPER, along, aside, UPPER_TURN);
  writeFrameTurn(m, LOWER, reached - along, -aside, LOWER_TURN);
}

/** Both along the line to the target, or folded with the longer one toward it. Lengths are no help: one may vanish beside the other. */
function writeInLine(m: Float64Array, isStraight: boolean, isUpperLonger: boolean): void {
  writeFrameTurn(m, UPPER, isStraight || isUpperLonger ? 1 : -1, 0, UPPER_TURN);
  writeFrameTurn(m, LOWER, isStraight || !isUpperLonger ? 1 : -1, 0, LOWER_TURN);
}

/** √(l₁² − k²) with the square as a product (Heron), which keeps its precision near full stretch. */
function elbowHeight(a: number, b: number, c: number): number {
  return Math.sqrt((a + b - c) * (b + c - a) * (a + c - b) * (a + b + c)) / (2 * c);
}

/** The turn that takes `bone` to along·DIRECTION + aside·SIDE and the hinge, seen along the bone, to SIDE × DIRECTION. */
function writeFrameTurn(m: Float64Array, bone: number, along: number, aside: number, to: number): void {
  copyVector(m, bone, NOW);
  perpendicular(m, HINGE, bone, NOW + 3, 0);
  cross(m, NOW, NOW + 3, NOW + 6);
  for (let i = 0; i < 3; i++) m[THEN + i] = along * m[DIRECTION + i] + aside * m[SIDE + i];
  unitise(m, THEN, 0);
  cross(m, SIDE, DIRECTION, THEN + 3);
  cross(m, THEN, THEN + 3, THEN + 6);
  multiplyByTransposed(m, THEN, NOW, to);
}

/** Turns the upper about its base and the lower with it and on; sizes and shear stay. */
export function turnBoth(m: Float64Array, upper: number, lower: number, weight: number): void {
  takePart(m, UPPER_TURN, weight);
  takePart(m, LOWER_TURN, weight);
  turnWorld(m, UPPER_TURN, upper);
  turnWorld(m, LOWER_TURN, lower);
  subtract(m, lower + 9, upper + 9, VECTOR);
  transform(m, UPPER_TURN, VECTOR, UPPER);
  set(m, lower + 9, m[upper + 9] + m[UPPER], m[upper + 10] + m[UPPER + 1], m[upper + 11] + m[UPPER + 2]);
}

/** Makes a turn that part of itself. */
function takePart(m: Float64Array, turn: number, weight: number): void {
  if (weight === 1) return;
  writeIdentity(m, ORIENTATION);
  slerp(m, ORIENTATION, turn, weight);
  copyMatrix(m, ORIENTATION, turn);
}

function turnWorld(m: Float64Array, turn: number, world: number): void {
  multiply(m, turn, world, PRODUCT);
  copyMatrix(m, PRODUCT, world);
}
