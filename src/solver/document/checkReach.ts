import { refuse } from './reader.ts';
import type { Bone } from './rig.ts';
import { quoted } from './words.ts';

/** A reach turns its bone and the parent: not on a root, one on a bone, one below a bone. */
export function checkReach(bones: readonly Bone[]): void {
  const lowerOf = new Map<string, string>();
  for (const [i, { name, parent, links = [] }] of bones.entries()) {
    for (const [j, link] of links.entries()) {
      if (link.kind !== 'reach') continue;
      const place = [i, 'links', j];
      if (parent === null) refuse('a reach on a root', 'a reach on a bone with a parent, the upper', place);
      const other = lowerOf.get(parent);
      if (other === name) refuse('a second reach on this bone', 'at most one reach on a bone', place);
      if (other !== undefined) {
        const found = `a second reach that turns ${quoted(parent)}, after the one on ${quoted(other)}`;
        refuse(found, 'at most one child of a bone with a reach', place);
      }
      lowerOf.set(parent, name);
    }
  }
}
