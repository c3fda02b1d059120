import { ROLES, type Role } from '../../solver/document/rig.ts';
import { list, needed } from '../../solver/document/structures.ts';
import { oneOf } from '../../solver/document/values.ts';
import { boneOf } from '../bind.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader, spoken } from './requirement.ts';

export interface RoleAsked extends RequirementBase {
  kind: 'role';
  bone: string;
  /** Any of these will do. */
  is: readonly Role[];
}

/** 1 where the bone has another role than one asked for. */
export const role: StructureKind<RoleAsked> = {
  kind: 'role',
  about: 'structure',
  read: requirementReader<RoleAsked>('role', {
    bone: needed(spoken),
    is: needed(list('roles', oneOf(ROLES), { least: 1 })),
  }),
  unit: () => 'bones',
  bones: ({ bone }) => [bone],
  inputs: () => [],
  missed: ({ bone, is }, { places, nameOf }) =>
    `${nameOf(bone)} has the role ${places.join(', ')}; ${is.join(' or ')} is asked.`,
  inspect({ bone, is }, { rig, binding }) {
    const name = boneOf(bone, binding);
    const found = rig.bones.find((candidate) => candidate.name === name)?.role ?? 'none';
    return (is as readonly string[]).includes(found) ? { measured: 0, places: [] } : { measured: 1, places: [found] };
  },
};
