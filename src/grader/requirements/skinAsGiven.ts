import { list, needed } from '../../solver/document/structures.ts';
import { text } from '../../solver/document/values.ts';
import { boneOf } from '../bind.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface SkinAsGiven extends RequirementBase {
  kind: 'skin-as-given';
  /** Parts that may have the role skin as well. */
  also: readonly string[];
}

/** How many bones pull at the mesh that should not, or no longer do: by role, against those of the start. */
export const skinAsGiven: StructureKind<SkinAsGiven> = {
  kind: 'skin-as-given',
  about: 'structure',
  read: requirementReader<SkinAsGiven>('skin-as-given', { also: needed(list('parts', text)) }),
  unit: () => 'bones',
  bones: ({ also }) => also,
  inputs: () => [],
  missed: (_, { places }) => `The skin is pulled otherwise than it was: ${places.join(', ')}.`,
  inspect({ also }, { exercise, rig, binding }) {
    const skinOf = (bones: typeof rig.bones) => bones.filter(({ role }) => role === 'skin').map(({ name }) => name);
    const given = skinOf(exercise.start.bones);
    const built = skinOf(rig.bones);
    const free = also.map((part) => boneOf(part, binding));
    const stray = built.filter((name) => !given.includes(name) && !free.includes(name));
    const gone = given.filter((name) => !built.includes(name) && !free.includes(name));
    const places = [
      ...stray.map((name) => `${name} has the role skin`),
      ...gone.map((name) => `${name} has it no longer`),
    ];
    return { measured: places.length, places };
  },
};
