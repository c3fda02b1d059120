import type { FollowLink } from '../../../src/solver/document/rig.ts';
import { inverse, product } from '../matrix.ts';
import type { Setting } from '../setting.ts';
import { slerp } from '../slerp.ts';
import { blend, subtract } from '../vector.ts';
import { putTogether, toRigSpace, type World } from '../world.ts';
import { takeApart } from './takeApart.ts';

export function follow(link: FollowLink, before: World, setting: Setting): World {
  const own = takeApart(setting, before);
  const goal = takeApart(setting, goalWorld(link, setting));
  const channels = link.channels ?? ['move', 'turn', 'size'];
  return putTogether({
    p: channels.includes('move') ? blend(own.p, goal.p, setting.weight) : own.p,
    q: channels.includes('turn') ? slerp(own.q, goal.q, setting.weight) : own.q,
    s: channels.includes('size') ? blend(own.s, goal.s, setting.weight) : own.s,
  });
}

/** W(source), or W(source)·R0(source)⁻¹·R0(self). */
function goalWorld(link: FollowLink, setting: Setting): World {
  const source = setting.worldOf(link.source);
  if (link.offset !== 'keep') return source;
  const sourceRest = setting.restOf(link.source);
  const selfRest = setting.restOf(setting.bone.name);
  const fromSourceRest = product(source.a, inverse(sourceRest.a));
  return {
    a: product(fromSourceRest, selfRest.a),
    base: toRigSpace({ a: fromSourceRest, base: source.base }, subtract(selfRest.base, sourceRest.base)),
  };
}
