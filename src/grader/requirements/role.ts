import { boneOf } from '../bind.ts';
import type { OfKind, StructureKind } from './kind.ts';

/** 1 where the bone has another role than one asked for. */
export const role: StructureKind<OfKind<'role'>> = {
  kind: 'role',
  about: 'structure',
  unit: () => 'bones',
  bones: ({ bone }) => [bone],
  inputs: () => [],
  missed: ({ bone, is }, { places, nameOf }) =>
    `${nameOf(bone)} has the role ${places.join(', ')}; ${is.join(' or ')} is asked.`,
  inspect({ bone, is }, { rig, binding }) {
    const name = boneOf(bone, binding);
    const found = rig.bones.find((candidate) => candidate.name === name)?.role ?? 'none';
    return is.includes(found) ? { measured: 0, places: [] } : { measured: 1, places: [found] };
  },
};
