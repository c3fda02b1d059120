import { LIMB } from './limb.ts';

const { UPPER, LOWER, DIRECTION, BEND } = LIMB;

/** This near a bound, as part of both lengths, the elbow lies in line. */
const IN_LINE = 1e-12;

/**
 * Writes how far along and aside the elbow lies, and how far along the tip is from there, with the law of cosines (Euclid,
 * Elements II.12–13).
 */
export function writeBend(m: Float64Array): void {
  const a = m[UPPER + 3];
  const b = m[LOWER + 3];
  const sum = a + b;
  const difference = Math.abs(a - b);
  const reached = Math.min(sum, Math.max(difference, m[DIRECTION + 3]));
  const tooLong = sum - reached;
  const tooShort = reached - difference;
  if (Math.min(tooLong, tooShort) <= IN_LINE * sum) {
    // Straight, or folded with the longer bone toward the target. Lengths are no help: one may vanish beside the other.
    const isStraight = tooLong <= tooShort;
    m[BEND] = isStraight || a >= b ? 1 : -1;
    m[BEND + 1] = 0;
    m[BEND + 2] = isStraight || a < b ? 1 : -1;
    return;
  }
  m[BEND] = 0.5 * (reached + ((a - b) * sum) / reached);
  m[BEND + 1] = elbowHeight(a, b, reached);
  m[BEND + 2] = reached - m[BEND];
}

/** √(l₁² − k²) with the square as a product (Heron), which keeps its precision near full stretch. */
function elbowHeight(a: number, b: number, c: number): number {
  return Math.sqrt((a + b - c) * (b + c - a) * (a + c - b) * (a + b + c)) / (2 * c);
}
