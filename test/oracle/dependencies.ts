/**
 * What each thing in a rig waits for, from the document alone. The things:
 * `pose B` its own pose, `links B` after its own links, `final B` as others read it, `link B.L`, `driver D`,
 * `switch B.S`.
 */
import type { Bone, DriverSource, Link, Point, Rig, UpToward } from '../../src/solver/document/rig.ts';
import { driversOf, isUpToReach, linksOf, lowerOf, reachIndex } from './names.ts';

export type Dependencies = ReadonlyMap<string, readonly string[]>;

export function dependencies(rig: Rig): Dependencies {
  const needs = new Map<string, string[]>();
  for (const bone of rig.bones) {
    addBone(rig, bone, needs);
    for (const definition of bone.switches ?? []) needs.set(`switch ${bone.name}.${definition.name}`, []);
  }
  for (const { name, inputs, output } of driversOf(rig)) {
    needs.set(
      `driver ${name}`,
      inputs.flatMap(({ from }) => inputNeeds(from)),
    );
    needs.get(outputThing(output))?.push(`driver ${name}`);
  }
  return needs;
}

function addBone(rig: Rig, bone: Bone, needs: Map<string, string[]>): void {
  const links = linksOf(bone);
  needs.set(`pose ${bone.name}`, parentNeeds(bone, -1));
  links.forEach((link, index) => {
    const previous = index === 0 ? `pose ${bone.name}` : `link ${bone.name}.${links[index - 1].name}`;
    needs.set(`link ${bone.name}.${link.name}`, [previous, ...parentNeeds(bone, index), ...linkNeeds(link)]);
  });
  const last = links.at(-1);
  needs.set(`links ${bone.name}`, [last === undefined ? `pose ${bone.name}` : `link ${bone.name}.${last.name}`]);
  const lower = lowerOf(rig, bone);
  const reachThing = lower && `link ${lower.name}.${linksOf(lower)[reachIndex(lower)].name}`;
  needs.set(`final ${bone.name}`, [`links ${bone.name}`, ...(reachThing === undefined ? [] : [reachThing])]);
}

/** Up to its own reach a lower bone finds its parent after the parent's own links only. */
function parentNeeds(bone: Bone, linkIndex: number): string[] {
  if (bone.parent === null) return [];
  return [`${isUpToReach(bone, linkIndex) ? 'links' : 'final'} ${bone.parent}`];
}

const finals = (...points: (Point | undefined)[]): string[] =>
  points.filter((point) => point !== undefined).map((point) => `final ${point.bone}`);

function linkNeeds(link: Link): string[] {
  if (link.kind === 'limit') return [];
  if (link.kind === 'follow' || link.kind === 'share') return [`final ${link.source}`];
  if (link.kind === 'span') return finals(link.target);
  if (link.kind === 'reach') return finals(link.target, link.pole);
  return [...finals(link.target), ...(link.up === undefined ? [] : upNeeds(link.up.toward))];
}

const upNeeds = (toward: UpToward): string[] => ('bone' in toward ? [`final ${toward.bone}`] : []);

function inputNeeds(from: DriverSource): string[] {
  if ('switch' in from) return [`switch ${from.switch}`];
  if ('turn' in from) return [`final ${from.turn.bone}`];
  if ('shift' in from) return [`final ${from.shift.bone}`];
  return finals(...from.gap);
}

function outputThing(output: NonNullable<Rig['drivers']>[number]['output']): string {
  if ('switch' in output) return `switch ${output.switch}`;
  if ('channel' in output) return `pose ${output.bone}`;
  return `link ${output.bone}.${output.link}`;
}
