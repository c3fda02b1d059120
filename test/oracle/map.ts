/** A driver's map: keys, shapes between them, and what lies beyond. */
import type { DriverMap } from '../../src/solver/document/rig.ts';

type Curve = readonly [number, number, number, number];
type Key = readonly [number, number];

/** CSS Easing Functions Level 1: ease-in-out is cubic-bezier(.42, 0, .58, 1). */
const EASED: Curve = [0.42, 0, 0.58, 1];

const bernstein = (first: number, second: number, t: number): number =>
  3 * (1 - t) * (1 - t) * t * first + 3 * (1 - t) * t * t * second + t * t * t;

/** The height of the curve over x in 0..1, its parameter found by halving. */
export function bezierHeight([x1, y1, x2, y2]: Curve, x: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (bernstein(x1, x2, middle) < x) low = middle;
    else high = middle;
  }
  return bernstein(y1, y2, (low + high) / 2);
}

/** The height over x in 0..1 of the stretch between two keys, itself from 0 to 1. */
function height(map: DriverMap, x: number): number {
  const shape = map.shape ?? 'straight';
  if (shape === 'stepped') return 0;
  if (shape === 'straight') return x;
  return bezierHeight(shape === 'eased' ? EASED : shape.bezier, x);
}

/** The slope of a stretch at its start or end, from the end point toward the nearest control point that differs. */
function endSlope(map: DriverMap, end: 'start' | 'end'): number {
  const shape = map.shape ?? 'straight';
  if (shape === 'straight') return 1;
  if (shape === 'stepped' || shape === 'eased') return 0;
  const [x1, y1, x2, y2] = shape.bezier;
  const points: Key[] = [
    [0, 0],
    [x1, y1],
    [x2, y2],
    [1, 1],
  ];
  if (end === 'end') points.reverse();
  const [from, ...others] = points;
  const toward = others.find((point) => point[0] !== from[0] || point[1] !== from[1]) as Key;
  return toward[0] === from[0] ? 0 : (toward[1] - from[1]) / (toward[0] - from[0]);
}

export function mapped(map: DriverMap, x: number): number {
  const { keys } = map;
  const first = keys[0];
  const last = keys[keys.length - 1];
  if (x < first[0]) return beyond(map, first, keys[0], keys[1], 'start', x);
  if (x >= last[0]) return beyond(map, last, keys[keys.length - 2], last, 'end', x);
  const right = keys.findIndex((key) => key[0] > x);
  const [x0, y0] = keys[right - 1];
  const [x1, y1] = keys[right];
  return y0 + (y1 - y0) * height(map, (x - x0) / (x1 - x0));
}

function beyond(map: DriverMap, from: Key, left: Key, right: Key, end: 'start' | 'end', x: number): number {
  if (map.beyond !== 'extend') return from[1];
  const slope = (endSlope(map, end) * (right[1] - left[1])) / (right[0] - left[0]);
  return from[1] + slope * (x - from[0]);
}
