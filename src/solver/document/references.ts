/** Readers of what refers to something that the rig declares elsewhere. */
import type { Known } from './known.ts';
import { nearest } from './nearest.ts';
import { type Reader, refuseValue } from './reader.ts';
import type { Point } from './rig.ts';
import { needed, optional, record } from './structures.ts';
import { numberFrom } from './values.ts';
import { quoted } from './words.ts';

/** Refuses a value that is none of `names`, saying what it should name and which is nearest. */
export function refuseUndeclared(value: unknown, names: readonly string[], what: string): never {
  const near = typeof value === 'string' ? nearest(value, names) : null;
  return refuseValue(value, near ? `${what}: ${quoted(near)}, perhaps` : what);
}

const boneNamed =
  (what: string): Reader<string, Known> =>
  (value, { bones }) =>
    typeof value === 'string' && bones.has(value) ? value : refuseUndeclared(value, [...bones.keys()], what);

/** The name of a bone of this rig. */
export const boneName = boneNamed('the name of a bone of this rig');

const parentName = boneNamed('the name of a bone of this rig, or null for a root');

export const parent: Reader<string | null, Known> = (value, known) =>
  value === null ? null : parentName(value, known);

function hasSwitch({ bones }: Known, name: string): boolean {
  const dot = name.indexOf('.');
  const owner = dot < 0 ? undefined : bones.get(name.slice(0, dot));
  return owner?.switches.has(name.slice(dot + 1)) ?? false;
}

/** "bone.switch" of this rig. */
export const switchName: Reader<string, Known> = (value, known) => {
  if (typeof value === 'string' && hasSwitch(known, value)) return value;
  const names = [...known.bones].flatMap(([bone, { switches }]) => [...switches].map((name) => `${bone}.${name}`));
  return refuseUndeclared(value, names, 'a switch of this rig, as "bone.switch"');
};

export const point: Reader<Point, Known> = record('a point on a bone', {
  bone: needed(boneName),
  at: optional(numberFrom(0, 1, ' (0 is the base, 1 the tip)')),
});
