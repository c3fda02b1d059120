import { ROLES, type Role } from '../../solver/document/rig.ts';
import { list, needed } from '../../solver/document/structures.ts';
import { oneOf } from '../../solver/document/values.ts';
import type { Built, StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface RoleOfOthers extends RequirementBase {
  kind: 'role-of-others';
  /** Any of these will do. */
  is: readonly Role[];
}

/** How many bones that were neither given nor asked for by name have another role than those named. */
export const roleOfOthers: StructureKind<RoleOfOthers> = {
  kind: 'role-of-others',
  about: 'structure',
  read: requirementReader<RoleOfOthers>('role-of-others', { is: needed(list('roles', oneOf(ROLES), { least: 1 })) }),
  unit: () => 'bones',
  bones: () => [],
  inputs: () => [],
  missed: ({ is }, { places }) => `Whatever you make besides should be ${is.join(' or ')}: ${places.join(', ')}.`,
  inspect({ is }, built) {
    const places = othersOf(built)
      .filter(({ role }) => !is.includes(role))
      .map(({ name, role }) => `${name} is ${role}`);
    return { measured: places.length, places };
  },
};

function othersOf({ exercise, rig, binding }: Built) {
  const spoken = new Set([...exercise.start.bones.map(({ name }) => name), ...binding.values()]);
  return rig.bones.filter(({ name }) => !spoken.has(name));
}
