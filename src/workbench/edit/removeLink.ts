import { changeDrivers, changeLinks, type Draft, type Edit } from './draft.ts';

/** Takes a link away, and the drivers that write to it. */
export function removeLink(bone: string, name: string): Edit {
  return {
    says: `take ${name} off ${bone}`,
    apply: (draft) => {
      const without = changeLinks(draft, bone, (links) => links.filter((link) => link.name !== name));
      return withoutLinkDrivers(without, bone, name);
    },
  };
}

function withoutLinkDrivers(draft: Draft, bone: string, link: string): Draft {
  return changeDrivers(draft, (drivers) =>
    drivers.filter(({ output }) => !('link' in output && output.bone === bone && output.link === link)),
  );
}
