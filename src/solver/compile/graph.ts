import type { Link } from '../document/rig.ts';
import { bonesRead } from '../drivers/inputs.ts';
import { kindOf } from '../links/table.ts';
import type { RigIndex } from './rigIndex.ts';

/**
 * What has to be evaluated before what. The nodes: the own pose of each bone; each link; each bone as others read it,
 * after all its links and after a reach that turns it; each driver; each switch. They depend on the document only: a
 * link of weight 0 counts.
 */
export interface Graph {
  readonly count: number;
  readonly pose: (bone: number) => number;
  readonly link: (link: number) => number;
  readonly bone: (bone: number) => number;
  readonly driver: (driver: number) => number;
  readonly switch: (own: number) => number;
  /** What each node waits for. */
  readonly needs: readonly (readonly number[])[];
}

export function dependencies(index: RigIndex): Graph {
  const bones = index.bones.length;
  const links = index.links.length;
  const drivers = index.drivers.length;
  const count = 2 * bones + links + drivers + index.switches.length;
  const nodes = {
    count,
    pose: (bone: number) => bone,
    link: (link: number) => bones + link,
    bone: (bone: number) => bones + links + bone,
    driver: (driver: number) => 2 * bones + links + driver,
    switch: (own: number) => 2 * bones + links + drivers + own,
  };
  const needs: number[][] = Array.from({ length: count }, () => []);
  const graph = { ...nodes, needs };
  for (let bone = 0; bone < bones; bone++) addBone(graph, index, bone);
  for (let driver = 0; driver < drivers; driver++) addDriver(graph, index, driver);
  return graph;
}

interface GraphInMaking extends Graph {
  readonly needs: number[][];
}

function addBone(graph: GraphInMaking, index: RigIndex, bone: number): void {
  const parent = index.parents[bone];
  const [first, end] = [index.firstLink[bone], index.firstLink[bone + 1]];
  let last = graph.pose(bone);
  for (let link = first; link < end; link++) {
    graph.needs[graph.link(link)].push(last, ...linkReads(graph, index, index.links[link].link));
    last = graph.link(link);
  }
  graph.needs[graph.bone(bone)].push(last);
  if (parent < 0) return;
  const reach = reachOf(index, bone);
  // The lower bone of a reach is posed on the upper as the upper is before the reach; all others wait for that.
  graph.needs[graph.pose(bone)].push(reach < 0 ? graph.bone(parent) : linksDone(graph, index, parent));
  if (reach >= 0) graph.needs[graph.bone(parent)].push(graph.link(reach));
}

const linkReads = (graph: Graph, index: RigIndex, link: Link): number[] =>
  kindOf(link)
    .reads(link)
    .map((name) => graph.bone(index.boneIndex.get(name)!));

/** The number of the bone's reach, −1 if it has none. */
function reachOf(index: RigIndex, bone: number): number {
  const place = index.bones[bone].links?.findIndex((link) => link.kind === 'reach') ?? -1;
  return place < 0 ? -1 : index.firstLink[bone] + place;
}

function linksDone(graph: Graph, index: RigIndex, bone: number): number {
  const [first, end] = [index.firstLink[bone], index.firstLink[bone + 1]];
  return end > first ? graph.link(end - 1) : graph.pose(bone);
}

function addDriver(graph: GraphInMaking, index: RigIndex, driver: number): void {
  const { inputs, output } = index.drivers[driver];
  const needs = graph.needs[graph.driver(driver)];
  for (const { from } of inputs) {
    if ('switch' in from) needs.push(graph.switch(index.switchIndex.get(from.switch)!));
    for (const bone of bonesRead(from)) needs.push(graph.bone(index.boneIndex.get(bone)!));
  }
  const driven =
    'switch' in output
      ? graph.switch(index.switchIndex.get(output.switch)!)
      : 'channel' in output
        ? graph.pose(index.boneIndex.get(output.bone)!)
        : graph.link(index.linkIndex.get(`${output.bone}.${output.link}`)!);
  graph.needs[driven].push(graph.driver(driver));
}
