import type { Bone, Rest } from '../../solver/document/rig.ts';
import { type Draft, type Edit, freshName } from './draft.ts';

/** Adds a bone at the end: a helper without a parent unless said otherwise. */
export function addBone(rest: Rest, bone: Partial<Bone> = {}): Edit {
  return {
    says: 'add a bone',
    apply: (draft: Draft): Draft => {
      const taken = draft.rig.bones.map((each) => each.name);
      const name = freshName(bone.name ?? 'bone', taken);
      const made: Bone = { parent: null, role: 'helper', rest, ...bone, name };
      return { ...draft, rig: { ...draft.rig, bones: [...draft.rig.bones, made] } };
    },
  };
}
