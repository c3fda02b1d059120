import type { Bone, Driver, Link, Rig, Switch } from '../document/rig.ts';

export interface OwnedLink {
  bone: number;
  link: Link;
}

export interface OwnedSwitch {
  bone: number;
  switch: Switch;
}

/** The rig's named things as lists in document order, and where each name stands in them. */
export interface RigIndex {
  readonly bones: readonly Bone[];
  readonly boneIndex: ReadonlyMap<string, number>;
  /** Parent of each bone, −1 for a root. */
  readonly parents: readonly number[];
  readonly links: readonly OwnedLink[];
  /** The number of each bone's first link. */
  readonly firstLink: readonly number[];
  readonly linkNames: readonly string[];
  readonly linkIndex: ReadonlyMap<string, number>;
  readonly switches: readonly OwnedSwitch[];
  readonly switchNames: readonly string[];
  readonly switchIndex: ReadonlyMap<string, number>;
  readonly drivers: readonly Driver[];
}

export function indexRig(rig: Rig): RigIndex {
  const bones = rig.bones;
  const boneIndex = indexOf(bones.map((bone) => bone.name));
  const links = bones.flatMap((bone, index) => (bone.links ?? []).map((link) => ({ bone: index, link })));
  const switches = bones.flatMap((bone, index) => (bone.switches ?? []).map((own) => ({ bone: index, switch: own })));
  const linkNames = links.map(({ bone, link }) => `${bones[bone].name}.${link.name}`);
  const switchNames = switches.map((own) => `${bones[own.bone].name}.${own.switch.name}`);
  return {
    bones,
    boneIndex,
    parents: bones.map((bone) => (bone.parent === null ? -1 : boneIndex.get(bone.parent)!)),
    links,
    firstLink: starts(bones.map((bone) => bone.links?.length ?? 0)),
    linkNames,
    linkIndex: indexOf(linkNames),
    switches,
    switchNames,
    switchIndex: indexOf(switchNames),
    drivers: rig.drivers ?? [],
  };
}

const indexOf = (names: readonly string[]): Map<string, number> => new Map(names.map((name, index) => [name, index]));

/** Where each of several lists starts when they are laid end to end, and where the last ends. */
function starts(counts: readonly number[]): number[] {
  const result = [0];
  for (const count of counts) result.push(result.at(-1)! + count);
  return result;
}
