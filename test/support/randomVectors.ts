import type { Axis, AxisName, Quat, Vec3 } from '../../src/solver/document/rig.ts';
import { between, chance, pick, type Random } from './random.ts';

export const AXIS_NAMES: readonly AxisName[] = ['+x', '-x', '+y', '-y', '+z', '-z'];
const HALF = Math.SQRT1_2;
/** Quarter and half turns, where special cases live. */
const ROUND_TURNS: readonly Quat[] = [
  [0, 0, 0, 1],
  [1, 0, 0, 0],
  [0, 1, 0, 0],
  [0, 0, 1, 0],
  [HALF, 0, 0, HALF],
  [0, -HALF, 0, HALF],
  [0.5, 0.5, 0.5, 0.5],
];

export const randomVector = (random: Random, size: number): Vec3 => [
  between(random, -size, size),
  between(random, -size, size),
  between(random, -size, size),
];

const unit = (v: readonly number[]): number[] => {
  const length = Math.sqrt(v.reduce((sum, x) => sum + x * x, 0));
  return v.map((x) => x / length);
};

export function randomDirection(random: Random): Vec3 {
  const v = randomVector(random, 1);
  const long = v[0] * v[0] + v[1] * v[1] + v[2] * v[2];
  return long > 1e-3 ? (unit(v) as unknown as Vec3) : [0, 0, 1];
}

/** A unit quaternion; with `round`, sometimes an exact quarter or half turn. */
export function randomTurn(random: Random, round = 0.3): Quat {
  if (chance(random, round)) return pick(random, ROUND_TURNS);
  const q = [...randomVector(random, 1), between(random, 0.05, 1)];
  return unit(q) as unknown as Quat;
}

/** A turn of at most about `most` radians, for poses that stay in reach. */
export function smallTurn(random: Random, most: number): Quat {
  const v = randomVector(random, most / 3.5);
  return unit([...v, 1]) as unknown as Quat;
}

export const randomAxis = (random: Random): Axis =>
  chance(random, 0.7) ? pick(random, AXIS_NAMES) : randomDirection(random);

export function axisVector(axis: Axis): Vec3 {
  if (typeof axis !== 'string') return axis;
  const sign = axis[0] === '-' ? -1 : 1;
  return [axis[1] === 'x' ? sign : 0, axis[1] === 'y' ? sign : 0, axis[1] === 'z' ? sign : 0];
}

/** An axis that is well clear of the line of another. */
export function axisAcross(random: Random, other: Axis): Axis {
  const a = axisVector(other);
  for (;;) {
    const axis = randomAxis(random);
    const b = axisVector(axis);
    if (Math.abs(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) < 0.95) return axis;
  }
}

/** base + R(turn)·(0, 0, length), the tip of a bone at rest. */
export function restTip(base: Vec3, [x, y, z, w]: Quat, length: number): Vec3 {
  return [
    base[0] + 2 * (x * z + w * y) * length,
    base[1] + 2 * (y * z - w * x) * length,
    base[2] + (1 - 2 * (x * x + y * y)) * length,
  ];
}
