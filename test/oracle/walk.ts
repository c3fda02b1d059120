/** Whether a cycle told by name is one: each step a true dependency of the document, and the last back at the first. */
import type { Rig } from '../../src/solver/document/rig.ts';
import { type Dependencies, dependencies } from './dependencies.ts';

/** `pose B`, `links B` and `final B` are told as "B", `link B.L` and `switch B.S` as such, a driver as "driver D". */
const told = (thing: string): string => (thing.startsWith('driver ') ? thing : thing.slice(thing.indexOf(' ') + 1));

/**
 * Things a walk may pass in silence after a name: all that belongs to a bone so named, for to read a bone is to read
 * each of its links; and a parent after its links only, told by its last link.
 */
const isSilent = (thing: string, name: string): boolean =>
  told(thing) === name || thing.startsWith(`link ${name}.`) || thing.startsWith('links ');

/** The names of a walk, first and last the same. */
export function isCycle(rig: Rig, names: readonly string[]): boolean {
  const needs = dependencies(rig);
  if (names.length < 2 || names[0] !== names.at(-1)) return false;
  return [...needs.keys()].filter((thing) => told(thing) === names[0]).some((start) => comesBack(needs, start, names));
}

function comesBack(needs: Dependencies, start: string, names: readonly string[]): boolean {
  let reached = [start];
  names.slice(1).forEach((name, i) => {
    const passed = silently(needs, reached, names[i]);
    reached = passed.flatMap((thing) => needs.get(thing) ?? []).filter((thing) => told(thing) === name);
  });
  return silently(needs, reached, names[0]).includes(start);
}

function silently(needs: Dependencies, things: readonly string[], name: string): string[] {
  const all = new Set(things);
  for (const thing of all) {
    for (const need of needs.get(thing) ?? []) if (isSilent(need, name)) all.add(need);
  }
  return [...all];
}
