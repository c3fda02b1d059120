import type { Rest, Vec3 } from '../../solver/document/rig.ts';
import { changeBone, type Draft, type Edit } from './draft.ts';

/** Changes a bone's rest; bones attached to its tip are carried along. */
export function setRest(name: string, change: Partial<Rest>, what: string): Edit {
  return {
    says: `change the ${what} of ${name}`,
    merge: `rest ${what} ${name}`,
    apply: (draft) => {
      const changed = changeBone(draft, name, (bone) => ({ ...bone, rest: { ...bone.rest, ...change } }));
      return placeTipChildren(changed, name, 0);
    },
  };
}

/** Where a bone's tip lies at rest, rig space, metres: base + turn·(0, 0, length). */
export function tipOf(rest: Rest): Vec3 {
  const [x, y, z, w] = rest.turn;
  const [bx, by, bz] = rest.base;
  const l = rest.length;
  return [bx + 2 * (x * z + w * y) * l, by + 2 * (y * z - w * x) * l, bz + (1 - 2 * (x * x + y * y)) * l];
}

/** Puts the bases of the bones attached to this one's tip where that tip is, and so on down. */
export function placeTipChildren(draft: Draft, name: string, depth: number): Draft {
  const parent = draft.rig.bones.find((bone) => bone.name === name);
  if (!parent || depth > draft.rig.bones.length) return draft;
  const base = tipOf(parent.rest);
  let placed = draft;
  for (const child of draft.rig.bones) {
    if (child.parent !== name || child.attach !== 'tip') continue;
    placed = changeBone(placed, child.name, (bone) => ({ ...bone, rest: { ...bone.rest, base } }));
    placed = placeTipChildren(placed, child.name, depth + 1);
  }
  return placed;
}
