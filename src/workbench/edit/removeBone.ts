import type { Bone, Driver } from '../../solver/document/rig.ts';
import { type Draft, type Edit, withField, withList } from './draft.ts';
import { bonesOfDriver, bonesReadByLink } from './references.ts';

/**
 * Takes a bone away with all that speaks of it: links that read it, drivers that read or write to it, parts bound
 * to it. Its children go to its parent.
 */
export function removeBone(name: string): Edit {
  return { says: `take ${name} away`, apply: (draft) => withoutBone(draft, name) };
}

function withoutBone(draft: Draft, name: string): Draft {
  const gone = draft.rig.bones.find((bone) => bone.name === name);
  if (!gone) return draft;
  const bones = draft.rig.bones.filter((bone) => bone !== gone).map((bone) => released(bone, gone));
  const drivers = (draft.rig.drivers ?? []).filter((driver) => !bonesOfDriver(driver).includes(name));
  const kept = drivers.filter((driver) => writesToSomething(bones, driver));
  const parts = Object.entries(draft.parts).filter(([, bound]) => bound !== name && !bound.startsWith(`${name}.`));
  return { ...draft, rig: withList({ ...draft.rig, bones }, 'drivers', kept), parts: Object.fromEntries(parts) };
}

function released(bone: Bone, gone: Bone): Bone {
  const links = bone.links?.filter((link) => !bonesReadByLink(link).includes(gone.name));
  const rest = links ? withList(bone, 'links', links) : bone;
  if (bone.parent !== gone.name) return rest;
  return withField({ ...rest, parent: gone.parent }, 'attach', undefined);
}

/** A driver of a link that went with the bone goes too. */
function writesToSomething(bones: readonly Bone[], driver: Driver): boolean {
  const { output } = driver;
  if (!('link' in output)) return true;
  const bone = bones.find((each) => each.name === output.bone);
  return bone?.links?.some((link) => link.name === output.link) ?? false;
}

/** What else would go with the bone, by name, to be said before it does. */
export function goesWith(draft: Draft, name: string): string[] {
  const after = withoutBone(draft, name);
  const drivers = new Set((after.rig.drivers ?? []).map((driver) => driver.name));
  const left = new Set(
    after.rig.bones.flatMap((bone) => (bone.links ?? []).map((link) => `${bone.name}.${link.name}`)),
  );
  const links = draft.rig.bones
    .filter((bone) => bone.name !== name)
    .flatMap((bone) =>
      (bone.links ?? []).map((link) => ({ id: `${bone.name}.${link.name}`, says: `${link.name} on ${bone.name}` })),
    )
    .filter((link) => !left.has(link.id));
  const gone = (draft.rig.drivers ?? []).filter((driver) => !drivers.has(driver.name));
  return [...links.map((link) => link.says), ...gone.map((driver) => driver.name)];
}
