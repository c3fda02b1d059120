import type { Places } from '../compile/places.ts';
import type { AimLink, UpToward, Vec3 } from '../document/rig.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { multiply, transform } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { writeDirection } from '../geometry/point.ts';
import { copyVector, perpendicular } from '../geometry/vector.ts';
import { axisVector, crossOf, perpendicularTo, unit } from './axes.ts';

/** What a roll reads: how the up direction is given, by what (two numbers), the bone's own frame of axis and up axis. */
export const UP_INTS = 4;
const BY = 1;
const OWN_FRAME = 3;

const INDEX = 0x3fffffff;

/** How the up direction is given, in code. */
export const UP_KINDS = { NONE: 0, POINT: 1, FIXED: 2, BONE_AXIS: 3, BONE_Y: 4, BONE_Z: 5 } as const;
const { NONE, POINT, FIXED, BONE_AXIS, BONE_Y, BONE_Z } = UP_KINDS;

/** sin of 1e-6 rad: an up direction this close to the aim decides no roll. */
const UP_LEAST = 9.999999999998333e-7;

/** Doubles that writeRolled uses at its `spare`: the frame [aim, up across it, their cross product], the up direction, nine. */
export const UP_SPARE = 22;
const UP = 9;
const NINE = 13;

export function upCode(up: AimLink['up'], axis: Vec3, places: Places): number[] {
  if (!up) return [NONE, 0, 0, 0];
  const side = perpendicularTo(axisVector(up.axis), axis);
  const third = crossOf(axis, side);
  // Laid down by rows, so that a product with it goes back from the bone's frame.
  const rows = [0, 1, 2].flatMap((row) => [axis[row], side[row], third[row]]);
  return [...towardCode(up.toward, places), places.constant(...rows)];
}

function towardCode(toward: UpToward, places: Places): number[] {
  if ('direction' in toward) return [FIXED, places.constant(...unit(toward.direction)), 0];
  if ('axis' in toward) {
    const kind = toward.axis === '+y' ? BONE_Y : toward.axis === '+z' ? BONE_Z : BONE_AXIS;
    return [kind, places.world(toward.bone), places.constant(...axisVector(toward.axis))];
  }
  return [POINT, ...places.point(toward)];
}

export const upReads = (up: AimLink['up']): string[] => (up && 'bone' in up.toward ? [up.toward.bone] : []);

export const hasUp = (code: Int32Array, at: number): boolean => code[at] !== NONE;

/**
 * Writes to `full` the turn with the axis along `direction` and the up axis, seen along it, on the up direction: of the
 * turns that aim, the roll leaves one. Returns false, and writes nothing there, if the up direction decides no roll.
 */
export function writeRolled(
  code: Int32Array,
  m: Float64Array,
  self: number,
  at: number,
  direction: number,
  full: number,
  spare: number,
): boolean {
  if (upSine(code, m, self, at, direction, spare) < UP_LEAST) return false;
  const f = spare & INDEX;
  const dx = m[direction];
  const dy = m[direction + 1];
  const dz = m[direction + 2];
  const ux = m[f + 3];
  const uy = m[f + 4];
  const uz = m[f + 5];
  m[f] = dx;
  m[f + 1] = dy;
  m[f + 2] = dz;
  m[f + 6] = dy * uz - dz * uy;
  m[f + 7] = dz * ux - dx * uz;
  m[f + 8] = dx * uy - dy * ux;
  multiply(m, f, code[at + OWN_FRAME], full);
  return true;
}

/**
 * The sine of the angle between the up direction and `direction`, 0 if there is no up direction. Leaves the unit vector
 * along the part of the up direction that is across `direction` at spare + 3.
 */
export function upSine(
  code: Int32Array,
  m: Float64Array,
  self: number,
  at: number,
  direction: number,
  spare: number,
): number {
  if (!writeUp(code, m, self, at, spare)) return 0;
  return perpendicular(m, spare + UP, direction, spare + 3, UP_LEAST);
}

/** Writes the up direction, a unit vector in rig space; returns false if the up point lies at the base. */
function writeUp(code: Int32Array, m: Float64Array, self: number, at: number, spare: number): boolean {
  const by = code[at + BY];
  if (code[at] === POINT) return writeDirection(code, m, self, at + BY, spare + UP);
  if (code[at] === FIXED) {
    copyVector(m, by, spare + UP);
    return true;
  }
  const isBoneTurn = isTurn(m, by);
  if (!isBoneTurn) orient(m, by, spare + NINE);
  transform(m, isBoneTurn ? by : spare + NINE, code[at + BY + 1], spare + UP);
  return true;
}
