import type { Draft, Edit } from './draft.ts';
import { renameInRig, splitSwitch } from './references.ts';

/** Gives a bone another name, in every reference to it and in the parts bound to it. */
export function renameBone(from: string, to: string): Edit {
  const rename = (bone: string) => (bone === from ? to : bone);
  return {
    says: `rename ${from} to ${to}`,
    apply: (draft: Draft): Draft => ({
      ...draft,
      rig: renameInRig(draft.rig, rename),
      parts: renamedParts(draft.parts, rename),
    }),
  };
}

function renamedParts(parts: Draft['parts'], rename: (bone: string) => string): Record<string, string> {
  const renamed: Record<string, string> = {};
  for (const [part, bound] of Object.entries(parts)) {
    if (!bound.includes('.')) renamed[part] = rename(bound);
    else {
      const [bone, name] = splitSwitch(bound);
      renamed[part] = `${rename(bone)}.${name}`;
    }
  }
  return renamed;
}
