import { changeBone, type Draft, type Edit, withField } from './draft.ts';
import { placeTipChildren, tipOf } from './setRest.ts';

/** Gives a bone another parent; one that is attached moves its base to the new parent's tip. */
export function setParent(name: string, parent: string | null): Edit {
  return {
    says: parent === null ? `leave ${name} without a parent` : `put ${name} under ${parent}`,
    apply: (draft) =>
      attached(
        changeBone(draft, name, (bone) => ({ ...bone, parent })),
        name,
      ),
  };
}

/** Fixes a bone's base on its parent's tip (and puts it there), or frees it. */
export function setAttach(name: string, attach: 'free' | 'tip'): Edit {
  const field = attach === 'tip' ? attach : undefined;
  return {
    says: attach === 'tip' ? `fix ${name} on its parent's tip` : `free ${name} from its parent's tip`,
    apply: (draft) =>
      attached(
        changeBone(draft, name, (bone) => withField(bone, 'attach', field)),
        name,
      ),
  };
}

function attached(draft: Draft, name: string): Draft {
  const bone = draft.rig.bones.find((each) => each.name === name);
  if (bone?.attach !== 'tip') return draft;
  const parent = draft.rig.bones.find((each) => each.name === bone.parent);
  if (!parent) return changeBone(draft, name, (each) => withField(each, 'attach', undefined));
  const placed = changeBone(draft, name, (each) => ({ ...each, rest: { ...each.rest, base: tipOf(parent.rest) } }));
  return placeTipChildren(placed, name, 0);
}
