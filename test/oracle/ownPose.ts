/** Rule 1: a bone's own pose, before any link. */
import type { Bone, BonePose, TurnOrder } from '../../src/solver/document/rig.ts';
import { driven } from './controls.ts';
import type { Evaluation } from './evaluation.ts';
import { apply, diagonal, identity, type Matrix, product } from './matrix.ts';
import { boneNamed, named } from './names.ts';
import { frameUnder } from './restFrame.ts';
import { fromAnglesDeg, fromQuaternion } from './rotation.ts';
import { add } from './vector.ts';
import { toRigSpace, type World } from './world.ts';

export function ownPose(e: Evaluation, bone: Bone, parent: World): World {
  const { base, fq } = frameUnder(e.rig, bone, parent);
  const pose = named(e.pose.bones, bone.name) ?? {};
  const order = bone.turnOrder ?? 'xyz';
  const move = add(pose.move ?? [0, 0, 0], driven(e, bone, 'move'));
  const a = product(
    fq,
    turnOf(pose, order),
    fromAnglesDeg(driven(e, bone, 'turn'), order),
    diagonal(pose.size ?? [1, 1, 1]),
  );
  return onTip(e, bone, parent, { a, base: add(base, apply(fq, move)) });
}

function turnOf({ turn }: BonePose, order: TurnOrder): Matrix {
  if (turn === undefined) return identity;
  return 'angles' in turn ? fromAnglesDeg(turn.angles, order) : fromQuaternion(turn);
}

/** With `attach: tip` the base is the parent's posed tip, whatever was done to it. */
export function onTip(e: Evaluation, bone: Bone, parent: World, world: World): World {
  if (bone.attach !== 'tip' || bone.parent === null) return world;
  const { length } = boneNamed(e.rig, bone.parent).rest;
  return { a: world.a, base: toRigSpace(parent, [0, 0, length]) };
}
