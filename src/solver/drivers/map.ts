import type { DriverMap } from '../document/rig.ts';
import { bezier } from './bezier.ts';

/**
 * A map among the constants: slope before the first key, slope after the last, shape, x1, y1, x2, y2 of its curve,
 * the number of keys, then x and y of each key.
 */
const AFTER = 1;
const SHAPE = 2;
const CURVE = 3;
const COUNT = 7;
const KEYS = 8;

const STRAIGHT = 0;
const STEPPED = 1;
const CURVED = 2;

type Curve = readonly [number, number, number, number];
/** CSS ease-in-out. */
const EASED: Curve = [0.42, 0, 0.58, 1];
const NO_CURVE: Curve = [0, 0, 1, 1];

/** The numbers of a map, for `mapped` to read from memory. */
export function mapConstants(map: DriverMap): number[] {
  const shape = map.shape ?? 'straight';
  const curve = typeof shape === 'object' ? shape.bezier : shape === 'eased' ? EASED : NO_CURVE;
  const code = shape === 'straight' ? STRAIGHT : shape === 'stepped' ? STEPPED : CURVED;
  const extend = map.beyond === 'extend' && code !== STEPPED;
  const before = extend ? slopeOf(map.keys[0], map.keys[1]) * startSlope(curve) : 0;
  const after = extend ? slopeOf(map.keys.at(-2)!, map.keys.at(-1)!) * endSlope(curve) : 0;
  return [before, after, code, ...curve, map.keys.length, ...map.keys.flat()];
}

type Key = readonly [number, number];
const slopeOf = ([x0, y0]: Key, [x1, y1]: Key): number => (y1 - y0) / (x1 - x0);

/** Toward the nearest control point that differs from the end; 0 if vertical. */
function startSlope([x1, y1, x2, y2]: Curve): number {
  if (x1 !== 0 || y1 !== 0) return x1 === 0 ? 0 : y1 / x1;
  if (x2 !== 0 || y2 !== 0) return x2 === 0 ? 0 : y2 / x2;
  return 1;
}

const endSlope = ([x1, y1, x2, y2]: Curve): number => startSlope([1 - x2, 1 - y2, 1 - x1, 1 - y1]);

/** The map at `at` of memory, at x. A key belongs to the stretch on its right. */
export function mapped(m: Float64Array, at: number, x: number): number {
  const first = at + KEYS;
  const last = first + 2 * (m[at + COUNT] - 1);
  if (x < m[first]) return m[first + 1] + m[at] * (x - m[first]);
  if (x >= m[last]) return m[last + 1] + m[at + AFTER] * (x - m[last]);
  let key = first;
  while (x >= m[key + 2]) key += 2;
  return within(m, at, key, x);
}

function within(m: Float64Array, at: number, key: number, x: number): number {
  const y = m[key + 1];
  if (m[at + SHAPE] === STEPPED) return y;
  const part = (x - m[key]) / (m[key + 2] - m[key]);
  const rise = m[key + 3] - y;
  if (m[at + SHAPE] === STRAIGHT) return y + rise * part;
  const c = at + CURVE;
  return y + rise * bezier(m[c], m[c + 1], m[c + 2], m[c + 3], part);
}
