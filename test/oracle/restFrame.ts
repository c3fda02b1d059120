/** Where a bone stands at rest: in rig space, under its rest parent, and under its parent as posed. */
import type { Bone, Rig } from '../../src/solver/document/rig.ts';
import { apply, determinant, identity, inverse, type Matrix, product, times, transposed } from './matrix.ts';
import { boneNamed } from './names.ts';
import { fromQuaternion } from './rotation.ts';
import { subtract, type Vector } from './vector.ts';
import { orient, rigSpace, toRigSpace, type World } from './world.ts';

export interface RestFrame {
  /** W(parent)·t, rig space. */
  readonly base: Vector;
  /** F, what the bone takes of its parent's turning and size. */
  readonly f: Matrix;
  readonly q: Matrix;
  /** F·Q. */
  readonly fq: Matrix;
}

/** ∛|det|, the size of a matrix as one number. */
export const meanSize = (m: Matrix): number => Math.cbrt(Math.abs(determinant(m)));

/** (F·Q)⁻¹·(base − rest base), the move that puts a base where it is; none where g is under 1e-9. */
export function moveTo(base: Vector, frame: RestFrame): Vector | undefined {
  if (meanSize(frame.f) < 1e-9) return undefined;
  return apply(product(transposed(frame.q), inverse(frame.f)), subtract(base, frame.base));
}

/** R0. */
export function restWorld(rig: Rig, name: string): World {
  const { rest } = boneNamed(rig, name);
  return { a: fromQuaternion(rest.turn), base: rest.base };
}

/** L = R0(parent)⁻¹·R0: its turning is Q, its base t. */
function restLocal(rig: Rig, bone: Bone): World {
  const parent = bone.parent === null ? rigSpace : restWorld(rig, bone.parent);
  const own = restWorld(rig, bone.name);
  const toParent = inverse(parent.a);
  return { a: product(toParent, own.a), base: apply(toParent, subtract(own.base, parent.base)) };
}

/** The rest frame under a parent that stands as given; rig space stands in for a root's parent. */
export function frameUnder(rig: Rig, bone: Bone, parent: World): RestFrame {
  const local = restLocal(rig, bone);
  const f = bone.parent === null ? identity : taken(bone, parent.a);
  return { base: toRigSpace(parent, local.base), f, q: local.a, fq: product(f, local.a) };
}

function taken(bone: Bone, a: Matrix): Matrix {
  if (bone.inherits === 'turn') return orient(a);
  if (bone.inherits === 'uniform') return times(orient(a), meanSize(a));
  return a;
}
