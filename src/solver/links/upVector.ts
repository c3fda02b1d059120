import type { Places } from '../compile/places.ts';
import type { AimLink, UpToward, Vec3 } from '../document/rig.ts';
import { multiply, transform } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { writeDirection } from '../geometry/point.ts';
import { copyVector, cross, perpendicular, ZERO } from '../geometry/vector.ts';
import { DIRECTION, FULL, GOAL_ORIENTATION, PRODUCT, VECTOR } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { axisVector, crossOf, perpendicularTo, unit } from './axes.ts';

/** What a roll reads: how the up direction is given, by what (two numbers), the bone's own frame of axis and up axis. */
export const UP_INTS = 4;
const BY = 1;
const OWN_FRAME = 3;

const NONE = 0;
const POINT = 1;
const FIXED = 2;
const BONE_AXIS = 3;

/** sin of 1e-6 rad: an up direction this close to the aim decides no roll. */
const UP_LEAST = 9.999999999998333e-7;

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
  if ('axis' in toward) return [BONE_AXIS, places.world(toward.bone), places.constant(...axisVector(toward.axis))];
  return [POINT, ...places.point(toward)];
}

export const upReads = (up: AimLink['up']): string[] => (up && 'bone' in up.toward ? [up.toward.bone] : []);

export const hasUp = (code: Int32Array, at: number): boolean => code[at] !== NONE;

/**
 * Writes to FULL the turn with the axis along DIRECTION and the up axis, seen along it, on the up direction: of the
 * turns that aim, the roll leaves one. Returns false, and writes nothing there, if the up direction decides no roll.
 */
export function writeRolled(machine: Machine, self: number, at: number): boolean {
  const { code, memory: m } = machine;
  if (upSine(machine, self, at) < UP_LEAST) return false;
  cross(m, DIRECTION, PRODUCT + 3, PRODUCT + 6);
  copyVector(m, DIRECTION, PRODUCT);
  multiply(m, PRODUCT, code[at + OWN_FRAME], FULL);
  return true;
}

/**
 * The sine of the angle between the up direction and DIRECTION, 0 if there is no up direction. Leaves the unit vector
 * along the part of the up direction that is across DIRECTION at PRODUCT + 3.
 */
export function upSine({ code, memory: m }: Machine, self: number, at: number): number {
  if (!writeUp(code, m, self, at)) return 0;
  return perpendicular(m, VECTOR, DIRECTION, PRODUCT + 3, UP_LEAST);
}

/** Writes the up direction, a unit vector in rig space, to VECTOR; returns false if the up point lies at the base. */
function writeUp(code: Int32Array, m: Float64Array, self: number, at: number): boolean {
  const by = code[at + BY];
  if (code[at] === POINT) return writeDirection(code, m, self, at + BY, VECTOR) >= ZERO;
  if (code[at] === FIXED) {
    copyVector(m, by, VECTOR);
    return true;
  }
  orient(m, by, GOAL_ORIENTATION);
  transform(m, GOAL_ORIENTATION, code[at + BY + 1], VECTOR);
  return true;
}
