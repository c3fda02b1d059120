import type { Bone, Rig } from '../../solver/document/rig.ts';
import type { StructureKind } from './kind.ts';
import { linkMeant } from './linkMeant.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface FewChanges extends RequirementBase {
  kind: 'few-changes';
}

/** How many fields of bones, links, switches and drivers differ from those of the start; one made or gone counts once. */
export const fewChanges: StructureKind<FewChanges> = {
  kind: 'few-changes',
  about: 'structure',
  read: requirementReader<FewChanges>('few-changes', {}),
  unit: () => 'changes',
  bones: () => [],
  inputs: () => [],
  missed: (_, { places, measured, allowed }) =>
    `A repair changes no more than it must: ${measured} here, ${allowed} at most (${places.join(', ')}).`,
  inspect(_, { exercise, rig }) {
    const places = changesBetween(exercise.start, rig);
    return { measured: places.length, places };
  },
};

interface Named {
  readonly name: string;
}

function changesBetween(before: Rig, after: Rig): string[] {
  const bones = changed('', before.bones.map(plain), after.bones.map(plain));
  const within = before.bones.flatMap((bone) => {
    const now = after.bones.find(({ name }) => name === bone.name);
    return now ? listsWithin(bone, now) : [];
  });
  const drivers = changed('driver ', before.drivers ?? [], after.drivers ?? []);
  return [...bones, ...within, ...drivers];
}

function listsWithin(before: Bone, after: Bone): string[] {
  const meant = ({ links = [] }: Bone) => links.map(linkMeant);
  const links = changed(`${before.name}.`, meant(before), meant(after));
  return [...links, ...changed(`${before.name}.`, before.switches ?? [], after.switches ?? [])];
}

/** The bone without its lists, which are compared by their own names. */
function plain({ links: _links, switches: _switches, ...bone }: Bone): Named {
  return bone;
}

/** Things that came or went, by name, and fields of those that stayed. */
function changed(prefix: string, before: readonly Named[], after: readonly Named[]): string[] {
  const was = new Map(before.map((one) => [one.name, one]));
  const is = new Map(after.map((one) => [one.name, one]));
  const gone = before.filter(({ name }) => !is.has(name)).map(({ name }) => `${prefix}${name} is gone`);
  const made = after.filter(({ name }) => !was.has(name)).map(({ name }) => `${prefix}${name} is new`);
  const stayed = after.flatMap((one) => {
    const old = was.get(one.name);
    return old ? fieldsThatDiffer(old, one).map((field) => `${field} of ${prefix}${one.name}`) : [];
  });
  return [...gone, ...made, ...stayed];
}

function fieldsThatDiffer(a: Named, b: Named): string[] {
  const fields = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  const textOf = (one: Named, field: string) => JSON.stringify(Object.getOwnPropertyDescriptor(one, field)?.value);
  return fields.filter((field) => textOf(a, field) !== textOf(b, field));
}
