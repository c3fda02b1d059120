import { multiply, multiplyTransposed } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { quaternionOfMatrix } from '../geometry/quaternion.ts';
import { WORLD_STRIDE } from '../program.ts';
import { AFFINE_STRIDE, type Binding, DUAL_STRIDE } from './binding.ts';
import { writeDual } from './dualQuaternion.ts';
import { writeOffset, writeSkinMatrix } from './skinMatrix.ts';

/** Places in the scratch: 3×3 parts of nine doubles, one affine transform of twelve, a quaternion. */
const WORLD = 0;
const ORIENTATION = 9;
const REST_INVERSE = 18;
const TURN = 27;
const QUATERNION = TURN + AFFINE_STRIDE;
const SKIN = QUATERNION + 4;
const SIZE = SKIN + 9;
/** Where `dual.ts` keeps the blend of one vertex: a dual quaternion, then the vertex with sizes applied. */
export const BLEND = SIZE + 9;
export const SIZED = BLEND + DUAL_STRIDE;
export const SCRATCH_LENGTH = SIZED + 3;

function copy(from: Float64Array, at: number, count: number, to: Float64Array, start: number): void {
  for (let i = 0; i < count; i++) to[start + i] = from[at + i];
}

/**
 * Takes world·rest⁻¹ of one bone apart into turning and moving, a dual quaternion in `room.dual`, and what is left
 * over, sizes and shear, as a transform of the mesh at rest about the bone's base, in `room.affine`.
 */
export function writeRigidPart(binding: Binding, world: Float64Array, bone: number): void {
  const { restTurnInverse, restBase, room } = binding;
  const { affine, dual, scratch } = room;
  const w = WORLD_STRIDE * bone;
  const to = AFFINE_STRIDE * bone;
  writeSkinMatrix(binding, world, bone);
  copy(affine, to, 9, scratch, SKIN);
  copy(world, w, 9, scratch, WORLD);
  copy(restTurnInverse, 9 * bone, 9, scratch, REST_INVERSE);

  orient(scratch, WORLD, ORIENTATION);
  multiply(scratch, ORIENTATION, REST_INVERSE, TURN);
  writeOffset(scratch, TURN, world, w + 9, restBase, 3 * bone);
  quaternionOfMatrix(scratch, TURN, QUATERNION);
  writeDual(scratch, QUATERNION, scratch, TURN + 9, dual, DUAL_STRIDE * bone);

  multiplyTransposed(scratch, TURN, SKIN, SIZE);
  copy(scratch, SIZE, 9, affine, to);
  writeOffset(affine, to, restBase, 3 * bone, restBase, 3 * bone);
}
