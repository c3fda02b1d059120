import type { LimitLink } from '../document/rig.ts';
import { cos, degToRad, sin } from '../number/index.ts';

/**
 * Most poses stay inside their limits. Whether one does well inside is told from the turn's matrix alone, without an angle:
 * an angle lies within `half` of `middle` if cos(angle − middle) > cos(half). All in doubt is left to the angles.
 *
 * The constants: cos and sin of the middle and cos of the half of yaw, then of twist; least and most of sin pitch; cos of
 * the cone.
 */
const TWIST = 3;
const PITCH = 6;
const CONE = 8;

/** What holds of every cosine and sine, and what holds of none. */
const ALWAYS = 2;
/** Radians by which an angle has to be inside. */
const MARGIN_RAD = 4e-9;
/** Radians from 0 and from 180° where a cosine tells angles apart badly. */
const BLUNT_RAD = 1e-3;

type Bounds = readonly [number, number];

export function insideConstants({ yaw, pitch, twist, cone }: LimitLink): number[] {
  return [...around(yaw), ...around(twist), ...sines(pitch), coneCosine(cone)];
}

function around(bounds: Bounds | undefined): number[] {
  if (!bounds || isFullTurn(bounds)) return [1, 0, -ALWAYS];
  const middleRad = degToRad(0.5 * (bounds[0] + bounds[1]));
  const halfRad = degToRad(0.5 * (bounds[1] - bounds[0]));
  return [cos(middleRad), sin(middleRad), leastCosine(halfRad)];
}

const isFullTurn = ([least, most]: Bounds): boolean => least === -180 && most === 180;

function leastCosine(halfRad: number): number {
  const isBlunt = halfRad < BLUNT_RAD || halfRad > Math.PI - BLUNT_RAD;
  return isBlunt ? ALWAYS : cos(halfRad - MARGIN_RAD);
}

function sines(bounds: Bounds | undefined): number[] {
  if (!bounds) return [-ALWAYS, ALWAYS];
  return [leastSine(bounds[0]), -leastSine(-bounds[1])];
}

function leastSine(deg: number): number {
  if (deg === -90) return -ALWAYS;
  return Math.abs(deg) > 89 ? ALWAYS : sin(degToRad(deg) + MARGIN_RAD);
}

const coneCosine = (cone: number | undefined): number => (cone === undefined ? -ALWAYS : leastCosine(degToRad(cone)));

/**
 * Whether a turn is well inside all its bounds. Given are the direction it turns +z to, and by how much it turns about that:
 * cosine and sine, both times 1 + z.
 */
export function isAxisWellInside(
  m: Float64Array,
  bounds: number,
  x: number,
  y: number,
  z: number,
  cosine: number,
  sine: number,
): boolean {
  if (z < m[bounds + CONE] || y < m[bounds + PITCH] || y > m[bounds + PITCH + 1]) return false;
  const yaw = m[bounds] * z + m[bounds + 1] * x;
  if (yaw < m[bounds + 2] * Math.sqrt(x * x + z * z)) return false;
  if (m[bounds + TWIST + 2] === -ALWAYS) return true;
  // Twice the squares of the parts of the quaternion that give the twist, and twice their product, sum to 1 + z.
  return z > -0.5 && m[bounds + TWIST] * cosine + m[bounds + TWIST + 1] * sine > m[bounds + TWIST + 2] * (1 + z);
}

/** The same of the turn at `turn`, nine doubles. */
export const isWellInside = (m: Float64Array, turn: number, bounds: number): boolean =>
  isAxisWellInside(m, bounds, m[turn + 6], m[turn + 7], m[turn + 8], m[turn] + m[turn + 4], m[turn + 1] - m[turn + 3]);
