import type { Quat, TurnOrder, Vec3 } from '../../solver/document/rig.ts';

const DEGREES = 180 / Math.PI;

/** The turn by three angles in degrees, in an order: `xyz` is Rx·Ry·Rz (turn about z first). */
export function turnOf(angles: Vec3, order: TurnOrder): Quat {
  let turn: Quat = [0, 0, 0, 1];
  for (const letter of order) {
    const i = 'xyz'.indexOf(letter);
    const half = angles[i]! / DEGREES / 2;
    const about: [number, number, number, number] = [0, 0, 0, Math.cos(half)];
    about[i] = Math.sin(half);
    turn = times(turn, about);
  }
  return turn;
}

/** Three angles in degrees that make this turn in that order, the middle one within ±90°. */
export function anglesOf(turn: Quat, order: TurnOrder): Vec3 {
  const [i, j, k] = [...order].map((letter) => 'xyz'.indexOf(letter)) as [number, number, number];
  const m = columns(turn);
  const sign = (j - i + 3) % 3 === 1 ? 1 : -1;
  const middle = Math.asin(Math.max(-1, Math.min(1, sign * m[k]![i]!)));
  const angles: [number, number, number] = [0, 0, 0];
  angles[j] = middle * DEGREES;
  if (Math.abs(m[k]![i]!) < 1 - 1e-12) {
    angles[i] = Math.atan2(-sign * m[k]![j]!, m[k]![k]!) * DEGREES;
    angles[k] = Math.atan2(-sign * m[j]![i]!, m[i]![i]!) * DEGREES;
  } else {
    // Where the middle angle is a right angle the outer two turn about one line: all of it goes to the first.
    angles[i] = Math.atan2(sign * m[j]![k]!, m[j]![j]!) * DEGREES;
  }
  return angles.map(clean) as unknown as Vec3;
}

/** The product p·q: q first, then p. */
export function times(p: Quat, q: Quat): Quat {
  const [a, b, c, d] = p;
  const [x, y, z, w] = q;
  return [
    d * x + a * w + b * z - c * y,
    d * y - a * z + b * w + c * x,
    d * z + a * y - b * x + c * w,
    d * w - a * x - b * y - c * z,
  ];
}

/** The columns of the turn's matrix: m[column][row]. */
export function columns([x, y, z, w]: Quat): [Vec3, Vec3, Vec3] {
  return [
    [1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)],
    [2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)],
    [2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)],
  ];
}

/** Rounds what arithmetic left over, so that 30 reads 30. */
function clean(degrees: number): number {
  return Math.round(degrees * 1e9) / 1e9 + 0;
}
