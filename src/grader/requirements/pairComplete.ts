import type { Bone } from '../../solver/document/rig.ts';
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
    const places = rig.bones.flatMap((bone) => faultOf(bone, bones) ?? []);
    return { measured: places.length, places };
  },
};

function faultOf(bone: Bone, bones: ReadonlyMap<string, Bone>): string | null {
  const side = /_(left|right)$/.exec(bone.name)?.[1];
  if (!side) return null;
  const otherName = bone.name.slice(0, -side.length) + (side === 'left' ? 'right' : 'left');
  const other = bones.get(otherName);
  if (!other) return `${bone.name} has no ${otherName}`;
  if (side === 'right') return null;
  if (other.role !== bone.role) return `${bone.name} is ${bone.role}, ${otherName} is ${other.role}`;
  const kinds = (one: Bone) => (one.links ?? []).map(({ kind }) => kind).join();
  return kinds(bone) === kinds(other) ? null : `${bone.name} and ${otherName} have other links`;
}
