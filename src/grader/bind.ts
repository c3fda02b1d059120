import type { Rig } from '../solver/document/rig.ts';
import type { Part } from './exercise/definition.ts';
import type { Exercise } from './exercise/exercise.ts';

/** Which bone or switch ("bone.switch") of a rig stands for each part; null where none does. */
export type Binding = ReadonlyMap<string, string | null>;

/** A part not listed takes the name the task gives; a name that is not in the rig leaves it unbound. */
export function bindParts(parts: readonly Part[], rig: Rig, chosen: Readonly<Record<string, string>> = {}): Binding {
  const bones = new Set(rig.bones.map((bone) => bone.name));
  const switches = new Set(rig.bones.flatMap((bone) => (bone.switches ?? []).map((own) => `${bone.name}.${own.name}`)));
  return new Map(
    parts.map((part) => {
      const name = Object.hasOwn(chosen, part.id) ? chosen[part.id]! : part.name;
      const known = part.is === 'bone' ? bones : switches;
      return [part.id, known.has(name) ? name : null];
    }),
  );
}

/** The bone that a requirement or an input speaks of: a part's, or one of the start by its name. */
export function boneOf(spoken: string, binding: Binding): string | null {
  return binding.has(spoken) ? binding.get(spoken)! : spoken;
}

/** The first part named in `spoken` that nothing is bound to. */
export function unboundOf(spoken: readonly string[], exercise: Exercise, binding: Binding): Part | null {
  return exercise.parts.find((part) => spoken.includes(part.id) && binding.get(part.id) === null) ?? null;
}
