import { type Edit, movedBy } from './draft.ts';

/** Moves a bone up or down the document; order among bones means nothing to the solver, only to the reader. */
export function reorderBone(name: string, places: number): Edit {
  return {
    says: `move ${name} ${places < 0 ? 'up' : 'down'}`,
    apply: (draft) => {
      const index = draft.rig.bones.findIndex((bone) => bone.name === name);
      return { ...draft, rig: { ...draft.rig, bones: movedBy(draft.rig.bones, index, places) } };
    },
  };
}
