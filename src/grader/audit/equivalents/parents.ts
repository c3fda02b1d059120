import type { Bone, FollowLink, Rig } from '../../../solver/document/rig.ts';
import { type Scope, type Vary, varyBones } from '../variation.ts';

/** Under the source, in place of a follow that keeps its offset. */
export const parentForFollow: Vary = (rig, scope) =>
  varyBones(rig, (bone) => {
    const [first, ...later] = bone.links ?? [];
    if (!first || !isWholeFollow(rig, bone, first) || !carriesPlainly(rig, scope, bone)) return [];
    return [[`under ${first.source} in place of a follow`, { ...bone, parent: first.source, links: later }]];
  });

/** A follow that keeps its offset, in place of the parent. */
export const followForParent: Vary = (rig, scope) =>
  varyBones(rig, (bone) => {
    if (bone.parent === null || !carriesPlainly(rig, scope, bone)) return [];
    const ride: FollowLink = { name: 'ride_extra', kind: 'follow', source: bone.parent, offset: 'keep' };
    const freed: Bone = { ...bone, parent: null, links: [ride, ...(bone.links ?? [])] };
    return [[`follows ${bone.parent} in place of being under it`, freed]];
  });

/** One more bone between a bone and its parent, at rest where the bone rests. */
export const interpose: Vary = (rig, { spoken }) =>
  rig.bones.flatMap((bone) => {
    if (bone.parent === null || bone.attach === 'tip' || spoken.has(bone.name) || reaches(rig, bone)) return [];
    const { inherits: _inherits, ...rest } = bone;
    const between: Bone = {
      name: 'between_extra',
      parent: bone.parent,
      role: 'helper',
      rest: bone.rest,
      ...(bone.inherits && { inherits: bone.inherits }),
    };
    const bones = rig.bones.flatMap((one) => (one === bone ? [between, { ...rest, parent: between.name }] : [one]));
    return [{ says: `${bone.name}: a bone between it and its parent`, rig: { ...rig, bones } }];
  });

function isWholeFollow(rig: Rig, bone: Bone, link: NonNullable<Bone['links']>[number]): link is FollowLink {
  if (link.kind !== 'follow' || link.offset !== 'keep' || (link.weight ?? 1) !== 1) return false;
  const isDriven = (rig.drivers ?? []).some(
    ({ output }) => 'link' in output && output.bone === bone.name && output.link === link.name,
  );
  return (link.channels ?? ['move', 'turn', 'size']).length === 3 && !isDriven;
}

/**
 * Whether being carried by a parent and following it come to the same for a bone: nobody poses it, nothing
 * measures it against its parent, and no size leans on it that a follow would take apart.
 */
function carriesPlainly(rig: Rig, { spoken, sizes }: Scope, bone: Bone): boolean {
  if (spoken.has(bone.name) || sizes || bone.attach === 'tip' || (bone.inherits ?? 'all') !== 'all') return false;
  const links = rig.bones.flatMap((one) => one.links ?? []);
  if (links.some(({ kind }) => kind === 'span') || reaches(rig, bone)) return false;
  if (links.some((link) => link.kind === 'share' && link.source === bone.name)) return false;
  if ((bone.links ?? []).some(({ kind }) => kind === 'limit' || kind === 'share')) return false;
  return !JSON.stringify(rig.drivers ?? []).includes(`"${bone.name}"`);
}

/** Whether the bone is one of the two that a reach turns. */
function reaches(rig: Rig, bone: Bone): boolean {
  const isReach = ({ links = [] }: Bone) => links.some(({ kind }) => kind === 'reach');
  return isReach(bone) || rig.bones.some((one) => one.parent === bone.name && isReach(one));
}
