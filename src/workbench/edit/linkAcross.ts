import { swapSide } from '../../solver/index.ts';
import { reflectLink } from '../../solver/mirror/reflectLink.ts';
import { boneOf, changeLinks, type Edit } from './draft.ts';

/** Gives the bone of the other side a link mirrored from this one, in place of one of that name. */
export function linkAcross(bone: string, name: string): Edit {
  const other = swapSide(bone);
  return {
    says: `copy ${name} on ${bone} to ${other}`,
    apply: (draft) => {
      const link = boneOf(draft, bone)?.links?.find((each) => each.name === name);
      if (!link) return draft;
      const copy = reflectLink(link, swapSide);
      return changeLinks(draft, other, (links) => {
        const stands = links.some((each) => each.name === name);
        return stands ? links.map((each) => (each.name === name ? copy : each)) : [...links, copy];
      });
    },
  };
}
