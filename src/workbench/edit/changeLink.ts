import type { Link, LinkKind } from '../../solver/document/rig.ts';
import { newLink } from './addLink.ts';
import { changeDrivers, changeLinks, type Edit, movedBy, withField } from './draft.ts';

/** Changes one link's fields; quick changes of one thing are one step. */
export function changeLink(bone: string, name: string, what: string, change: (link: Link) => Link): Edit {
  return {
    says: `change the ${what} of ${name} on ${bone}`,
    merge: `${what} of ${bone}.${name}`,
    apply: (draft) =>
      changeLinks(draft, bone, (links) => links.map((link) => (link.name === name ? change(link) : link))),
  };
}

/** Makes a link another kind, with what it points at or follows kept. */
export function setLinkKind(bone: string, name: string, kind: LinkKind): Edit {
  return changeLink(bone, name, 'kind', (link) => {
    const made = newLink(name, kind, otherOf(link) ?? bone);
    return withField(made, 'weight', link.weight);
  });
}

/** Renames a link, and the driver that writes to it. */
export function renameLink(bone: string, from: string, to: string): Edit {
  return {
    says: `rename ${from} on ${bone} to ${to}`,
    apply: (draft) => {
      const renamed = changeLinks(draft, bone, (links) =>
        links.map((link) => (link.name === from ? { ...link, name: to } : link)),
      );
      return changeDrivers(renamed, (drivers) =>
        drivers.map((driver) => {
          const { output } = driver;
          if (!('link' in output) || output.bone !== bone || output.link !== from) return driver;
          return { ...driver, output: { ...output, link: to } };
        }),
      );
    },
  };
}

/** Moves a link up or down among the bone's links, which apply in order. */
export function reorderLink(bone: string, name: string, places: number): Edit {
  return {
    says: `move ${name} on ${bone} ${places < 0 ? 'up' : 'down'}`,
    apply: (draft) =>
      changeLinks(draft, bone, (links) =>
        movedBy(
          links,
          links.findIndex((link) => link.name === name),
          places,
        ),
      ),
  };
}

/** The bone that a link follows, points at or reaches for; none for a limit. */
export function otherOf(link: Link): string | undefined {
  if (link.kind === 'limit') return undefined;
  return 'source' in link ? link.source : link.target.bone;
}
