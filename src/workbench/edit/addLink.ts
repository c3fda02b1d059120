import type { Link, LinkKind } from '../../solver/document/rig.ts';
import { changeLinks, type Edit, freshName } from './draft.ts';

/** Adds a link of a kind at the end of the bone's own; `other` is the bone it follows, points at or reaches for. */
export function addLink(bone: string, kind: LinkKind, other: string): Edit {
  return {
    says: `add a ${kind} to ${bone}`,
    apply: (draft) =>
      changeLinks(draft, bone, (links) => {
        const name = freshName(
          kind,
          links.map((link) => link.name),
        );
        return [...links, newLink(name, kind, other)];
      }),
  };
}

/** A link of that kind with nothing said that need not be. */
export function newLink(name: string, kind: LinkKind, other: string): Link {
  switch (kind) {
    case 'follow':
      return { name, kind, source: other };
    case 'share':
      return { name, kind, source: other, fraction: 0.5 };
    case 'limit':
      return { name, kind, yaw: [-90, 90] };
    case 'aim':
    case 'span':
    case 'reach':
      return { name, kind, target: { bone: other } };
  }
}
