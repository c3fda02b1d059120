import type { Bone, Quat, Rig, Vec3 } from '../../solver/document/rig.ts';
import { columns, times } from '../pose/angles.ts';
import { frameAt } from './frame.ts';
import { cross, dot, minus, plus, scaled, unit } from './vector.ts';

type Basis = readonly [Vec3, Vec3, Vec3];

/** A bone's rest frame under its posed parent, F·Q of the rig format: what its move, turn and shift are told in. */
export function restFrame(rig: Rig, world: Float64Array, bone: Bone): Basis {
  const index = rig.bones.findIndex((each) => each.name === bone.parent);
  const parent = rig.bones[index];
  if (!parent) return columns(bone.rest.turn);
  const [px, py, pz, pw] = parent.rest.turn;
  const inverse: Quat = [-px, -py, -pz, pw];
  const local = columns(times(inverse, bone.rest.turn));
  const frame = taken(world, index, bone.inherits ?? 'all');
  return local.map((column) => applied(frame, column)) as unknown as Basis;
}

/** Coordinates of a rig-space vector along the columns of a basis; 0 along columns that are flat. */
export function coordinatesIn(basis: Basis, v: Vec3): Vec3 {
  const [a, b, c] = basis;
  const volume = dot(a, cross(b, c));
  if (Math.abs(volume) < 1e-12) return basis.map((axis) => dot(v, axis) / (dot(axis, axis) || 1)) as unknown as Vec3;
  return [dot(v, cross(b, c)) / volume, dot(v, cross(c, a)) / volume, dot(v, cross(a, b)) / volume];
}

export function applied([a, b, c]: Basis, v: Vec3): Vec3 {
  return plus(scaled(a, v[0]), plus(scaled(b, v[1]), scaled(c, v[2])));
}

function taken(world: Float64Array, parent: number, inherits: 'all' | 'uniform' | 'turn'): Basis {
  const { x, y, z } = frameAt(world, parent);
  if (inherits === 'all') return [x, y, z];
  const forward = unit(z);
  const upward = unit(minus(y, scaled(forward, dot(y, forward))), [0, 1, 0]);
  const turned: Basis = [cross(upward, forward), upward, forward];
  if (inherits === 'turn') return turned;
  const even = Math.cbrt(Math.abs(dot(x, cross(y, z))));
  return turned.map((axis) => scaled(axis, even)) as unknown as Basis;
}
