import type { Bone, Driver, Link } from '../../solver/document/rig.ts';
import { sideOf } from '../../solver/index.ts';
import { ownerOf } from '../sentence/outputs.ts';
import { boneOf, type Draft, type Edit, freshName, withField, withList } from './draft.ts';
import { renameInLink } from './references.ts';

/**
 * Makes a bone once more, after it in the list: like it in all but its name. Drivers go on writing to the original
 * alone, and a reach is not copied, since two bones of one parent cannot both reach.
 */
export function copyBone(name: string): Edit {
  return {
    says: `copy ${name}`,
    apply: (draft) => {
      const bones = draft.rig.bones.flatMap((bone) =>
        bone.name === name ? [bone, copyOf(bone, copyName(draft, name))] : [bone],
      );
      return { ...draft, rig: { ...draft.rig, bones } };
    },
  };
}

/** "vane_2", or "vane_2_left": the word for the side stays the last one. */
export function copyName(draft: Draft, name: string): string {
  const taken = draft.rig.bones.map((bone) => bone.name);
  const side = sideOf(name);
  if (side === null || !name.endsWith(`_${side}`)) return freshName(name, taken);
  const stem = name.slice(0, -side.length - 1);
  let n = 2;
  while (taken.includes(`${stem}_${n}_${side}`)) n++;
  return `${stem}_${n}_${side}`;
}

/** What the copy has of its original and what it has not, to be said once it is there. */
export function copyWords(draft: Draft, name: string): string {
  const bone = boneOf(draft, name);
  if (!bone) return '';
  const reaches = namesOf((bone.links ?? []).filter(isReach));
  const drivers = namesOf((draft.rig.drivers ?? []).filter(writesTo(name)));
  const has = [
    bone.role === 'skin' ? 'a skin bone' : `a ${bone.role}`,
    bone.parent === null ? 'without a parent' : `under ${bone.parent}`,
    'where it lies',
    ...(bone.locks ? ['with its locks'] : []),
    ...listed('with its links', namesOf((bone.links ?? []).filter((link) => !isReach(link)))),
    ...listed('with its switches', namesOf(bone.switches ?? [])),
  ];
  const not = [
    ...(reaches.length > 0
      ? [`Not copied: ${reaches.join(', ')}, for two bones of one parent cannot both reach.`]
      : []),
    ...(drivers.length > 0 ? [`Drivers are not copied: ${drivers.join(', ')} on ${name} alone.`] : []),
  ];
  return [`${copyName(draft, name)} is a copy of ${name}: ${has.join(', ')}.`, ...not].join(' ');
}

function copyOf(bone: Bone, name: string): Bone {
  const links = (bone.links ?? []).filter((link) => !isReach(link));
  const own = links.map((link) => renameInLink(undriven(link), (other) => (other === bone.name ? name : other)));
  return withList({ ...bone, name }, 'links', own);
}

/** What is written for a driven number may be anything; the copy's is driven no more. */
function undriven(link: Link): Link {
  const weight = link.weight === undefined ? undefined : bounded(link.weight, 0, 1);
  const whole = link.kind === 'share' ? { ...link, fraction: bounded(link.fraction, -2, 2) } : link;
  return withField<Link, 'weight'>(whole, 'weight', weight);
}

function bounded(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

function isReach({ kind }: Link): boolean {
  return kind === 'reach';
}

function writesTo(name: string): (driver: Driver) => boolean {
  return ({ output }) => ownerOf(output) === name;
}

function namesOf(things: readonly { name: string }[]): string[] {
  return things.map((thing) => thing.name);
}

function listed(words: string, names: readonly string[]): string[] {
  return names.length > 0 ? [`${words} ${names.join(' and ')}`] : [];
}
