/** The one way numbers are compared in the tests: the tolerance is always stated, and only finite numbers compare. */

export type Numbers = number | ArrayLike<number>;

function list(numbers: Numbers, side: string, label: string): number[] {
  const values = typeof numbers === 'number' ? [numbers] : Array.from(numbers);
  values.forEach((value, index) => {
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new Error(`${label}: ${side}[${index}] is ${value}, not a finite number`);
    }
  });
  return values;
}

function mustBeTolerance(tolerance: number, label: string): void {
  if (!(Number.isFinite(tolerance) && tolerance >= 0)) throw new Error(`${label}: no tolerance, but ${tolerance}`);
}

/** Fails unless every |actual − expected| ≤ tolerance. Number against number, or lists of one length. */
export function expectClose(actual: Numbers, expected: Numbers, tolerance: number, label = 'expectClose'): void {
  mustBeTolerance(tolerance, label);
  if ((typeof actual === 'number') !== (typeof expected === 'number')) {
    throw new Error(`${label}: one is a number, the other a list`);
  }
  const got = list(actual, 'actual', label);
  const want = list(expected, 'expected', label);
  if (got.length !== want.length) throw new Error(`${label}: ${got.length} numbers, expected ${want.length}`);
  got.forEach((value, index) => {
    const off = Math.abs(value - want[index]);
    if (!(off <= tolerance)) {
      throw new Error(`${label}: [${index}] is ${value}, expected ${want[index]} ± ${tolerance}, off by ${off}`);
    }
  });
}

/** How far from unit length a quaternion may be and still be compared as a turn. */
const UNIT_TOLERANCE = 1e-6;

function unitQuaternion(q: ArrayLike<number>, side: string, label: string): number[] {
  const values = list(q, side, label);
  const length = Math.sqrt(values.reduce((sum, value) => sum + value * value, 0));
  if (values.length !== 4) throw new Error(`${label}: ${side} has ${values.length} numbers, not 4`);
  if (Math.abs(length - 1) > UNIT_TOLERANCE) throw new Error(`${label}: ${side} has length ${length}, not 1`);
  return values.map((value) => value / length);
}

/**
 * 1 − |q1·q2| of two unit quaternions, 0 for the same turn (q and −q are one), about angle²/8 for a small difference.
 * Taken as half the squared distance, which keeps its digits where 1 − |dot| would lose them.
 */
export function turnDistance(q1: ArrayLike<number>, q2: ArrayLike<number>, label = 'turnDistance'): number {
  const a = unitQuaternion(q1, 'first', label);
  const b = unitQuaternion(q2, 'second', label);
  const squared = (sign: number) => a.reduce((sum, value, i) => sum + (value - sign * b[i]) ** 2, 0);
  return Math.min(squared(1), squared(-1)) / 2;
}

/** Fails unless 1 − |q1·q2| ≤ tolerance. Quaternions [x, y, z, w]. */
export function expectSameTurn(
  q1: ArrayLike<number>,
  q2: ArrayLike<number>,
  tolerance: number,
  label = 'expectSameTurn',
): void {
  mustBeTolerance(tolerance, label);
  const distance = turnDistance(q1, q2, label);
  if (!(distance <= tolerance)) {
    throw new Error(`${label}: [${Array.from(q1)}] is not [${Array.from(q2)}]: 1 − |dot| = ${distance} > ${tolerance}`);
  }
}

/** Where a double stands in the order of all doubles; +0 and −0 stand in one place. */
function rank(value: number): bigint {
  const bits = new BigInt64Array(new Float64Array([value]).buffer)[0];
  return bits < 0n ? -(bits & 0x7fff_ffff_ffff_ffffn) : bits;
}

/** How many steps from one double to the next lie between two finite numbers. */
export function ulpsBetween(a: number, b: number): number {
  list([a, b], 'value', 'ulpsBetween');
  const steps = rank(a) - rank(b);
  return Number(steps < 0n ? -steps : steps);
}
