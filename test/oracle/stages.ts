/** A bone's stages: its own pose, after each of its links, and as others read it. */
import type { Bone, Link, Point } from '../../src/solver/document/rig.ts';
import { fractionOf, weightOf } from './controls.ts';
import type { Evaluation } from './evaluation.ts';
import { aim } from './links/aim.ts';
import { follow } from './links/follow.ts';
import { limit } from './links/limit.ts';
import { type Limb, reach } from './links/reach.ts';
import { share } from './links/share.ts';
import { span } from './links/span.ts';
import { boneNamed, isUpToReach, linksOf, lowerOf, reachIndex, reachOf } from './names.ts';
import { onTip, ownPose } from './ownPose.ts';
import { frameUnder, type RestFrame, restWorld } from './restFrame.ts';
import type { Setting } from './setting.ts';
import type { Vector } from './vector.ts';
import { rigSpace, toRigSpace, type World } from './world.ts';

/** The bone as others read it: after all its links, and after a reach that turns it. */
export function worldOf(e: Evaluation, name: string): World {
  const bone = boneNamed(e.rig, name);
  const lower = lowerOf(e.rig, bone);
  return lower === undefined ? afterOwnLinks(e, bone) : reached(e, lower).upper;
}

export function pointOf(e: Evaluation, { bone, at }: Point): Vector {
  const { length } = boneNamed(e.rig, bone).rest;
  return toRigSpace(worldOf(e, bone), [0, 0, (at ?? 0) * length]);
}

/** A bone's rest frame as others read it. */
export function frameOf(e: Evaluation, name: string): RestFrame {
  const bone = boneNamed(e.rig, name);
  return frameUnder(e.rig, bone, bone.parent === null ? rigSpace : worldOf(e, bone.parent));
}

const afterOwnLinks = (e: Evaluation, bone: Bone): World => afterLinks(e, bone, linksOf(bone).length);

/** Up to its own reach a bone finds its parent before that reach; later, and without one, as others read it. */
function parentFor(e: Evaluation, bone: Bone, linkIndex: number): World {
  if (bone.parent === null) return rigSpace;
  if (isUpToReach(bone, linkIndex)) return afterOwnLinks(e, boneNamed(e.rig, bone.parent));
  return worldOf(e, bone.parent);
}

function afterLinks(e: Evaluation, bone: Bone, count: number): World {
  return e.once(`${bone.name} after ${count} links`, () => {
    if (count === 0) return ownPose(e, bone, parentFor(e, bone, -1));
    const before = afterLinks(e, bone, count - 1);
    const link = linksOf(bone)[count - 1];
    if (weightOf(e, bone, link) === 0) return before;
    if (link.kind === 'reach') return reached(e, bone).lower;
    const parent = parentFor(e, bone, count - 1);
    const after = applied(e, link, before, settingOf(e, bone, link, parent));
    return after === before ? before : onTip(e, bone, parent, after);
  });
}

function applied(e: Evaluation, link: Link, before: World, setting: Setting): World {
  switch (link.kind) {
    case 'follow':
      return follow(link, before, setting);
    case 'aim':
      return aim(link, before, setting);
    case 'span':
      return span(link, before, setting);
    case 'share':
      return share(link, fractionOf(e, setting.bone, link), before, setting);
    case 'limit':
      return limit(link, before, setting);
    case 'reach':
      throw new Error('a reach turns two bones at once');
  }
}

function reached(e: Evaluation, lower: Bone): Limb {
  return e.once(`reach of ${lower.name}`, () => {
    const link = reachOf(lower);
    const upper = parentFor(e, lower, reachIndex(lower));
    const limb = { upper, lower: afterLinks(e, lower, reachIndex(lower)) };
    if (weightOf(e, lower, link) === 0) return limb;
    return reach(link, limb, settingOf(e, lower, link, upper));
  });
}

function settingOf(e: Evaluation, bone: Bone, link: Link, parent: World): Setting {
  return {
    bone,
    frame: frameUnder(e.rig, bone, parent),
    weight: weightOf(e, bone, link),
    worldOf: (name) => worldOf(e, name),
    pointOf: (point) => pointOf(e, point),
    frameOf: (name) => frameOf(e, name),
    restOf: (name) => restWorld(e.rig, name),
    raise: (flag) => e.raise(flag, bone.name, link.name),
    undecided: () => {
      e.isUndecided = true;
    },
  };
}
