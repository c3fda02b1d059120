/** Looking things up in a rig document by name; the document is taken to be readable. */
import type { Bone, Driver, Link, ReachLink, Rig, Switch } from '../../src/solver/document/rig.ts';

export function boneNamed(rig: Rig, name: string): Bone {
  const bone = rig.bones.find((candidate) => candidate.name === name);
  if (bone === undefined) throw new Error(`no bone ${name}`);
  return bone;
}

/** What a record holds under a name; a name such as `constructor` may be any bone's. */
export const named = <T>(record: Readonly<Record<string, T>> | undefined, name: string): T | undefined =>
  record !== undefined && Object.hasOwn(record, name) ? record[name] : undefined;

export const linksOf = (bone: Bone): readonly Link[] => bone.links ?? [];

export function switchNamed(rig: Rig, reference: string): { owner: Bone; definition: Switch } {
  const [boneName, switchName] = reference.split('.');
  const owner = boneNamed(rig, boneName);
  const definition = (owner.switches ?? []).find((candidate) => candidate.name === switchName);
  if (definition === undefined) throw new Error(`no switch ${reference}`);
  return { owner, definition };
}

/** Where the reach stands among a bone's links, −1 where there is none. */
export const reachIndex = (bone: Bone): number => linksOf(bone).findIndex((link) => link.kind === 'reach');

/** Whether a link of a bone (−1: its own pose) comes no later than the bone's own reach, if it has one. */
export const isUpToReach = (bone: Bone, linkIndex: number): boolean =>
  reachIndex(bone) >= 0 && linkIndex <= reachIndex(bone);

/** The lower bone of the reach that turns this bone as its upper, if there is one. */
export const lowerOf = (rig: Rig, upper: Bone): Bone | undefined =>
  rig.bones.find((bone) => bone.parent === upper.name && reachIndex(bone) >= 0);

export const reachOf = (lower: Bone): ReachLink => linksOf(lower)[reachIndex(lower)] as ReachLink;

export const driversOf = (rig: Rig): readonly Driver[] => rig.drivers ?? [];

export const driverOfLink = (rig: Rig, bone: string, link: string, field: 'weight' | 'fraction'): Driver | undefined =>
  driversOf(rig).find(
    ({ output }) => 'link' in output && output.bone === bone && output.link === link && output.field === field,
  );

export const driverOfSwitch = (rig: Rig, reference: string): Driver | undefined =>
  driversOf(rig).find(({ output }) => 'switch' in output && output.switch === reference);

export const driverOfChannel = (rig: Rig, bone: string, channel: string): Driver | undefined =>
  driversOf(rig).find(({ output }) => 'channel' in output && output.bone === bone && output.channel === channel);
