import { readRig } from '../document/readRig.ts';
import type { Reading, Refusal } from '../document/refusal.ts';
import { type Rename, splitSwitch } from '../document/renaming.ts';
import type { Bone, Driver, Rig } from '../document/rig.ts';
import { reflectBone } from './reflectBone.ts';
import { reflectDriver } from './reflectDriver.ts';
import { LAST_WORD, onSide, otherSide, type Side, type SideWords, sideOf, swapSide } from './sides.ts';

/** What becomes of one item: how it stands afterwards, and its copy. */
interface Copied<T> {
  original: T;
  copy: T;
}

/**
 * The items with their copies. A copy takes the place of what has its name and `gives way`; otherwise it follows its
 * original. `copied` is null for what is not copied.
 */
function withCopies<T extends { name: string }>(
  items: readonly T[],
  copied: (item: T) => Copied<T> | null,
  givesWay: (item: T) => boolean,
): T[] {
  const pairs = new Map(items.map((item) => [item, copied(item)]));
  const copies = new Map([...pairs.values()].filter((pair) => pair !== null).map(({ copy }) => [copy.name, copy]));
  const replaced = new Set(items.filter((item) => givesWay(item) && copies.has(item.name)).map(({ name }) => name));
  return items.flatMap((item) => {
    const pair = pairs.get(item);
    if (pair) return replaced.has(pair.copy.name) ? [pair.original] : [pair.original, pair.copy];
    return [givesWay(item) ? (copies.get(item.name) ?? item) : item];
  });
}

/** The bone that a driver writes to: a channel or link of it, or a switch that it owns. */
function writtenBone({ output }: Driver): string {
  return 'switch' in output ? splitSwitch(output.switch)[0] : output.bone;
}

/** A driver without a side word becomes two, one for each side. */
function driverPair(driver: Driver, from: Side, sides: SideWords, rename: Rename): Copied<Driver> {
  const copy = reflectDriver(driver, rename);
  if (sideOf(driver.name, sides) !== null) return { original: driver, copy: { ...copy, name: rename(driver.name) } };
  return {
    original: { ...driver, name: onSide(driver.name, from, sides) },
    copy: { ...copy, name: onSide(driver.name, otherSide(from), sides) },
  };
}

function inCopy({ place, found, expected }: Refusal, from: Side): Refusal {
  return { place: '', found: `${found}, at ${place} once the ${from} side is copied across`, expected };
}

/**
 * The rig with one side made anew on the other across x = 0: its bones, their links, and the drivers that write to
 * them, in place of the bones and drivers of the same name there. Middle bones, drivers that write to them, and the
 * mesh stay. Refused, as it would be when read, where the result could not be: two drivers would write one output, a
 * name would be taken by what is not on the other side, or a copied link would name a bone that does not exist.
 */
export function copyAcross(rig: Rig, from: Side, sides: SideWords = LAST_WORD): Reading<Rig> {
  const rename = (name: string) => swapSide(name, sides);
  const to = otherSide(from);
  const sideWritten = (driver: Driver) => sideOf(writtenBone(driver), sides);

  const bones = withCopies<Bone>(
    rig.bones,
    (bone) => (sideOf(bone.name, sides) === from ? { original: bone, copy: reflectBone(bone, rename) } : null),
    (bone) => sideOf(bone.name, sides) === to,
  );
  const drivers = withCopies<Driver>(
    rig.drivers ?? [],
    (driver) => (sideWritten(driver) === from ? driverPair(driver, from, sides, rename) : null),
    (driver) => sideWritten(driver) === to,
  );
  const read = readRig({ ...rig, bones, ...(rig.drivers && { drivers }) });
  return read.ok ? read : { ok: false, refusal: inCopy(read.refusal, from) };
}
