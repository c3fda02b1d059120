import { multiply, multiplyByTransposed, writeIdentity } from '../geometry/matrix.ts';
import { slerp } from '../geometry/slerp.ts';
import { perpendicular } from '../geometry/vector.ts';
import { LIMB } from './limb.ts';
import { writeBend } from './reachBend.ts';
import { turnColumns } from './turnColumns.ts';

const { UPPER, LOWER, DIRECTION, HINGE, SIDE, BEND, SPARE } = LIMB;
/** Frames of a bone, [bone, hinge, bone × hinge], as it is and as it shall be. */
const NOW = SPARE;
const THEN = SPARE + 9;
const TURN = SPARE + 18;
const PART = SPARE + 27;
const QUATERNION = SPARE + 36;

/** A cosine up to this is a right angle but for rounding. */
const ROUNDING = 4e-15;

/**
 * Turns the upper bone about its base and the lower with it and on, so that the tip comes to the target. Sizes and shear
 * stay. Each turn is that part of itself that `weight` says, and the lower bone's base stays on the upper.
 */
export function turnLimb(m: Float64Array, upper: number, lower: number, weight: number): void {
  writeBend(m);
  turnBone(m, UPPER, upper, weight);
  const length = m[UPPER + 3];
  for (let i = 0; i < 3; i++) m[lower + 9 + i] = m[upper + 9 + i] + length * m[UPPER + i];
  m[BEND] = m[BEND + 2];
  m[BEND + 1] = -m[BEND + 1];
  turnBone(m, LOWER, lower, weight);
}

/** Turns the world and the direction of a bone by part of the turn that bends the limb. */
function turnBone(m: Float64Array, bone: number, world: number, weight: number): void {
  writeNow(m, bone);
  writeThen(m);
  if (weight !== 1) takePart(m, weight);
  turnWorld(m, world);
  m[bone] = m[THEN];
  m[bone + 1] = m[THEN + 1];
  m[bone + 2] = m[THEN + 2];
}

/** Puts THEN only part of the way from NOW, by the turn in rig space. */
function takePart(m: Float64Array, weight: number): void {
  multiplyByTransposed(m, THEN, NOW, TURN);
  writeIdentity(m, PART);
  slerp(m, PART, TURN, weight, QUATERNION);
  multiply(m, PART, NOW, THEN);
}

/** Turns three columns from NOW to THEN. */
function turnWorld(m: Float64Array, world: number): void {
  turnColumns(
    m,
    world,
    m[NOW],
    m[NOW + 1],
    m[NOW + 2],
    m[NOW + 3],
    m[NOW + 4],
    m[NOW + 5],
    m[THEN],
    m[THEN + 1],
    m[THEN + 2],
    m[THEN + 3],
    m[THEN + 4],
    m[THEN + 5],
  );
}

function writeNow(m: Float64Array, bone: number): void {
  const ux = m[bone];
  const uy = m[bone + 1];
  const uz = m[bone + 2];
  if (Math.abs(m[HINGE] * ux + m[HINGE + 1] * uy + m[HINGE + 2] * uz) > ROUNDING) {
    perpendicular(m, HINGE, bone, HINGE, 0);
  }
  const nx = m[HINGE];
  const ny = m[HINGE + 1];
  const nz = m[HINGE + 2];
  m[NOW] = ux;
  m[NOW + 1] = uy;
  m[NOW + 2] = uz;
  m[NOW + 3] = nx;
  m[NOW + 4] = ny;
  m[NOW + 5] = nz;
  m[NOW + 6] = uy * nz - uz * ny;
  m[NOW + 7] = uz * nx - ux * nz;
  m[NOW + 8] = ux * ny - uy * nx;
}

/** The bone shall lie along BEND, and the hinge along SIDE × DIRECTION. */
function writeThen(m: Float64Array): void {
  const dx = m[DIRECTION];
  const dy = m[DIRECTION + 1];
  const dz = m[DIRECTION + 2];
  const ex = m[SIDE];
  const ey = m[SIDE + 1];
  const ez = m[SIDE + 2];
  const along = m[BEND];
  const aside = m[BEND + 1];
  const scale = 1 / Math.sqrt(along * along + aside * aside);
  const ux = (along * dx + aside * ex) * scale;
  const uy = (along * dy + aside * ey) * scale;
  const uz = (along * dz + aside * ez) * scale;
  const nx = ey * dz - ez * dy;
  const ny = ez * dx - ex * dz;
  const nz = ex * dy - ey * dx;
  m[THEN] = ux;
  m[THEN + 1] = uy;
  m[THEN + 2] = uz;
  m[THEN + 3] = nx;
  m[THEN + 4] = ny;
  m[THEN + 5] = nz;
  m[THEN + 6] = uy * nz - uz * ny;
  m[THEN + 7] = uz * nx - ux * nz;
  m[THEN + 8] = ux * ny - uy * nx;
}
