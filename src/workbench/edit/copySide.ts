import { copyAcross, type Side } from '../../solver/index.ts';
import type { Edit } from './draft.ts';

/** Makes one side's bones, links and drivers anew on the other, in place of what has their names there. */
export function copySide(from: Side): Edit {
  return {
    says: `copy the ${from} side across`,
    apply: (draft) => {
      const copied = copyAcross(draft.rig, from);
      return copied.ok ? { ...draft, rig: copied.value } : draft;
    },
    refuses: (draft) => {
      const copied = copyAcross(draft.rig, from);
      return copied.ok ? undefined : copied.refusal;
    },
  };
}
