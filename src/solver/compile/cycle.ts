import type { Graph } from './graph.ts';
import type { RigIndex } from './rigIndex.ts';

/**
 * A cycle among the nodes that could not be put in order, as names along the walk, each reading the next, the first
 * repeated at the end. It starts with a link where it has one, and is the shortest that goes through it.
 */
export function namedCycle(graph: Graph, index: RigIndex, isOrdered: (node: number) => boolean): string[] {
  const stuck = (node: number) => readsOf(graph, index, node).filter((need) => !isOrdered(need));
  const unordered = Array.from({ length: graph.count }, (_, node) => node).filter((node) => !isOrdered(node));
  const some = anyCycle(unordered[0], stuck);
  const links = some.filter((node) => node >= graph.link(0) && node < graph.bone(0));
  const start = Math.min(...(links.length > 0 ? links : some));
  const names = shortestCycle(start, stuck).map((node) => nameOf(graph, index, node));
  const told = names.filter((name, i) => name !== names[i - 1]);
  return told.length > 1 ? told : [...told, ...told];
}

/**
 * What a node needs, and for a bone every one of its links: a walk then goes from the bone straight to the link that
 * matters, not through all that come after it.
 */
function readsOf(graph: Graph, index: RigIndex, node: number): number[] {
  const bone = node - graph.bone(0);
  if (bone < 0 || bone >= index.bones.length) return [...graph.needs[node]];
  const links = Array.from(index.bones[bone].links ?? [], (_, i) => graph.link(index.firstLink[bone] + i));
  return [graph.pose(bone), ...links, ...graph.needs[node]];
}

/** Every stuck node reads another stuck one, so a walk along them comes back. */
function anyCycle(start: number, stuck: (node: number) => number[]): number[] {
  const walk: number[] = [];
  const seen = new Map<number, number>();
  let node = start;
  while (!seen.has(node)) {
    seen.set(node, walk.length);
    walk.push(node);
    node = stuck(node)[0];
  }
  return walk.slice(seen.get(node));
}

/** Breadth first from `start` back to it. */
function shortestCycle(start: number, stuck: (node: number) => number[]): number[] {
  const cameFrom = new Map<number, number>();
  const queue = [start];
  for (const node of queue) {
    for (const next of stuck(node)) {
      if (next === start) return walkTo(node, start, cameFrom);
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, node);
      queue.push(next);
    }
  }
  throw new Error('a node on a cycle is not reached from itself');
}

function walkTo(end: number, start: number, cameFrom: ReadonlyMap<number, number>): number[] {
  const walk = [start, end];
  for (let node = end; node !== start; ) {
    node = cameFrom.get(node)!;
    walk.push(node);
  }
  return end === start ? [start, start] : walk.reverse();
}

function nameOf(graph: Graph, index: RigIndex, node: number): string {
  if (node < graph.link(0)) return index.bones[node].name;
  if (node < graph.bone(0)) return index.linkNames[node - graph.link(0)];
  if (node < graph.driver(0)) return index.bones[node - graph.bone(0)].name;
  if (node < graph.switch(0)) return `driver ${index.drivers[node - graph.driver(0)].name}`;
  return index.switchNames[node - graph.switch(0)];
}
