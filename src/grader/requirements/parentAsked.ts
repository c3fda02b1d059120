import { list, needed } from '../../solver/document/structures.ts';
import { boneOf } from '../bind.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader, spoken } from './requirement.ts';

export interface ParentAsked extends RequirementBase {
  kind: 'parent';
  bone: string;
  /** Any of these will do; null is no parent. */
  is: readonly (string | null)[];
}

/** 1 where the bone's parent is none of those asked for. */
export const parentAsked: StructureKind<ParentAsked> = {
  kind: 'parent',
  about: 'structure',
  read: requirementReader<ParentAsked>('parent', {
    bone: needed(spoken),
    is: needed(list('parents', (value, known) => (value === null ? null : spoken(value, known)), { least: 1 })),
  }),
  unit: () => 'bones',
  bones: ({ bone, is }) => [bone, ...is.filter((name) => name !== null)],
  inputs: () => [],
  missed: ({ bone, is }, { places, nameOf }) =>
    `The parent of ${nameOf(bone)} is ${places.join()}; ${is.map((name) => (name === null ? 'none' : nameOf(name))).join(' or ')} is asked.`,
  inspect({ bone, is }, { rig, binding }) {
    const parent = rig.bones.find(({ name }) => name === boneOf(bone, binding))?.parent ?? null;
    const asked = is.map((name) => (name === null ? null : boneOf(name, binding)));
    return asked.includes(parent) ? { measured: 0, places: [] } : { measured: 1, places: [parent ?? 'none'] };
  },
};
