import type { Bone } from '../../solver/document/rig.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface PairComplete extends RequirementBase {
  kind: 'pair-complete';
}

/**
 * How many bones of one side have no other side, or one with another role. What their links do is a matter of
 * `mirrors`: the two sides may be built differently and behave alike.
 */
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
  return other.role === bone.role ? null : `${bone.name} is ${bone.role}, ${otherName} is ${other.role}`;
}
