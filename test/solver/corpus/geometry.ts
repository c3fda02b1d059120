/** Places, turns and axes: half of them round, so that exact coincidences turn up, half anywhere. */
import type { Axis, AxisName, Quat, Vec3 } from '../../../src/solver/document/rig.ts';
import type { Draw } from './draw.ts';

const HALF = Math.sqrt(0.5);

export const AXIS_NAMES: readonly AxisName[] = ['+x', '-x', '+y', '-y', '+z', '-z'];

export const vector = (draw: Draw, size: number): Vec3 => [
  draw.real(-size, size),
  draw.real(-size, size),
  draw.real(-size, size),
];

/** On a grid of quarter metres. */
export const gridVector = (draw: Draw, steps: number): Vec3 => [
  draw.whole(-steps, steps) / 4,
  draw.whole(-steps, steps) / 4,
  draw.whole(-steps, steps) / 4,
];

/** A unit vector of three or four numbers: points of the cube until one lies well within the ball. */
function onSphere(draw: Draw, count: number): number[] {
  for (;;) {
    const v = Array.from({ length: count }, () => draw.real(-1, 1));
    const squared = v.reduce((sum, x) => sum + x * x, 0);
    if (squared > 0.01 && squared <= 1) return v.map((x) => x / Math.sqrt(squared));
  }
}

export const direction = (draw: Draw): Vec3 => onSphere(draw, 3) as unknown as Vec3;

/** One of the 24 turns that take axes to axes. */
function quarterTurn(draw: Draw): Quat {
  const quarters: readonly Quat[] = [
    [0, 0, 0, 1],
    [HALF, 0, 0, HALF],
    [0, HALF, 0, HALF],
    [0, 0, HALF, HALF],
    [0, -HALF, 0, HALF],
    [1, 0, 0, 0],
    [0, 1, 0, 0],
    [0, 0, 1, 0],
    [HALF, HALF, 0, 0],
    [0, HALF, -HALF, 0],
    [0.5, 0.5, 0.5, 0.5],
    [0.5, -0.5, 0.5, -0.5],
  ];
  return draw.one(quarters);
}

export const turn = (draw: Draw, round: number): Quat =>
  draw.often(round) ? quarterTurn(draw) : (onSphere(draw, 4) as unknown as Quat);

export const axis = (draw: Draw): Axis => (draw.often(0.75) ? draw.one(AXIS_NAMES) : direction(draw));

export function axisVector(given: Axis): Vec3 {
  if (typeof given !== 'string') return given;
  const sign = given[0] === '-' ? -1 : 1;
  return [given[1] === 'x' ? sign : 0, given[1] === 'y' ? sign : 0, given[1] === 'z' ? sign : 0];
}

/** An axis well clear of the line of another. */
export function axisAcross(draw: Draw, other: Axis): Axis {
  const a = axisVector(other);
  for (;;) {
    const candidate = axis(draw);
    const b = axisVector(candidate);
    if (Math.abs(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) < 0.95) return candidate;
  }
}

/** base + R(turn)·(0, 0, length). */
export const tipOf = (base: Vec3, [x, y, z, w]: Quat, length: number): Vec3 => [
  base[0] + 2 * (x * z + w * y) * length,
  base[1] + 2 * (y * z - w * x) * length,
  base[2] + (1 - 2 * (x * x + y * y)) * length,
];
