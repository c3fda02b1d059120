import type { Bone, FollowLink } from '../../../solver/document/rig.ts';
import { type Vary, varyBones } from '../variation.ts';

/** Put under the bone that it should follow, with the link forgotten: its place at rest stays its own. */
export const parentForAnyFollow: Vary = (rig) =>
  varyBones(rig, (bone) =>
    (bone.links ?? []).flatMap((link): [string, Bone][] => {
      if (link.kind !== 'follow' || bone.attach === 'tip' || bone.parent === link.source) return [];
      const links = bone.links!.filter((one) => one !== link);
      return [[`under ${link.source} in place of ${link.name}`, { ...bone, parent: link.source, links }]];
    }),
  );

/** A follow that loses the offset, in place of the parent. */
export const bareFollowForParent: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.parent === null || bone.attach === 'tip') return [];
    const ride: FollowLink = { name: 'ride_extra', kind: 'follow', source: bone.parent };
    const freed: Bone = { ...bone, parent: null, links: [ride, ...(bone.links ?? [])] };
    return [[`follows ${bone.parent} without its offset in place of being under it`, freed]];
  });

/** Let go of the parent's tip, or put onto it where the base lies there anyway. */
export const reattach: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.parent === null) return [];
    const { attach = 'free', ...rest } = bone;
    return attach === 'tip' ? [['let go of the tip', rest]] : [['put onto the tip', { ...rest, attach: 'tip' }]];
  });
