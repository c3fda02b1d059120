import type { Bone, Link, Rig } from '../../solver/document/rig.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface PairComplete extends RequirementBase {
  kind: 'pair-complete';
}

/** How many bones of one side have no other side, or one with another role or other kinds of links. */
export const pairComplete: StructureKind<PairComplete> = {
  kind: 'pair-complete',
  about: 'structure',
  read: requirementReader<PairComplete>('pair-complete', {}),
  unit: () => 'bones',
  bones: () => [],
  inputs: () => [],
  missed: (_, { places }) => `The two sides are not a pair: ${places.join(', ')}.`,
  inspect(_, { rig }) {
    const bones = new Map(rig.bones.map((bone) => [bone.name, bone]));
    const places = rig.bones.flatMap((bone) => faultOf(bone, bones, (one) => kindsOf(one, rig)) ?? []);
    return { measured: places.length, places };
  },
};

function faultOf(bone: Bone, bones: ReadonlyMap<string, Bone>, kinds: (one: Bone) => string): string | null {
  const side = /_(left|right)$/.exec(bone.name)?.[1];
  if (!side) return null;
  const otherName = bone.name.slice(0, -side.length) + (side === 'left' ? 'right' : 'left');
  const other = bones.get(otherName);
  if (!other) return `${bone.name} has no ${otherName}`;
  if (side === 'right') return null;
  if (other.role !== bone.role) return `${bone.name} is ${bone.role}, ${otherName} is ${other.role}`;
  return kinds(bone) === kinds(other) ? null : `${bone.name} and ${otherName} have other links`;
}

/** Kinds of a bone's links, in order, without those that are always at weight 0 and so do nothing. */
function kindsOf({ name, links = [] }: Bone, { drivers = [] }: Rig): string {
  const isDriven = (link: Link) =>
    drivers.some(({ output }) => 'link' in output && output.bone === name && output.link === link.name);
  return links
    .filter((link) => link.weight !== 0 || isDriven(link))
    .map(({ kind }) => kind)
    .join();
}
