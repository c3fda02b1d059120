import type { Rig } from '../document/rig.ts';
import { dependencies } from './graph.ts';
import { indexRig } from './rigIndex.ts';

/**
 * What each thing of a rig waits for, directly or through others, by name: bones as others read them, links
 * as "bone.link", drivers and switches ("bone.switch") by their names. In a cycle things wait for themselves.
 */
export function waits(rig: Rig): ReadonlyMap<string, ReadonlySet<string>> {
  const index = indexRig(rig);
  const graph = dependencies(index);
  const names = new Map<number, string>([
    ...index.bones.map((bone, i) => [graph.bone(i), bone.name] as const),
    ...index.linkNames.map((name, i) => [graph.link(i), name] as const),
    ...index.drivers.map((driver, i) => [graph.driver(i), driver.name] as const),
    ...index.switchNames.map((name, i) => [graph.switch(i), name] as const),
  ]);
  return new Map([...names].map(([node, name]) => [name, namesBefore(node)]));

  function namesBefore(start: number): Set<string> {
    const seen = new Set<number>();
    const queue = [...graph.needs[start]!];
    for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
      if (seen.has(node)) continue;
      seen.add(node);
      queue.push(...graph.needs[node]!);
    }
    return new Set([...seen].flatMap((node) => names.get(node) ?? []));
  }
}
