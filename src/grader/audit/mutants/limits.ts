import type { LimitLink, ReachLink } from '../../../solver/document/rig.ts';
import { type Vary, varyLinks } from '../variation.ts';

type Range = readonly [number, number];
const ANGLES = ['yaw', 'pitch', 'twist'] as const;

/** A bound of a limit forgotten, twice as wide, or on the other side. */
export const relimit: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'limit') return [];
    return [...ANGLES.flatMap((name) => changesOf(link, name)), ...coneChanges(link), ...moveChanges(link)];
  });

function changesOf(link: LimitLink, name: (typeof ANGLES)[number]): [string, LimitLink][] {
  const { [name]: range, ...without } = link;
  if (!range) return [];
  const mirrored: Range = [0 - range[1], 0 - range[0]];
  const doubled: Range = [2 * range[0], 2 * range[1]];
  return [
    [`no limit of ${name}`, without],
    [`${name} limited on the other side`, { ...link, [name]: mirrored }],
    [`${name} limited twice as wide`, { ...link, [name]: doubled }],
  ];
}

function coneChanges(link: LimitLink): [string, LimitLink][] {
  const { cone, ...without } = link;
  if (cone === undefined) return [];
  return [
    ['no cone', without],
    ['a cone twice as wide', { ...link, cone: Math.min(180, 2 * cone) }],
  ];
}

function moveChanges(link: LimitLink): [string, LimitLink][] {
  const { move, ...without } = link;
  return move ? [['no limit of move', without]] : [];
}

/** The pole of a reach forgotten, or taken for its target. */
export const repole: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'reach' || !link.pole) return [];
    const { pole: _pole, ...without } = link;
    const changes: [string, ReachLink][] = [
      ['pole forgotten', without],
      ['its target taken for the pole', { ...link, pole: link.target }],
      ['its pole taken for the target', { ...link, target: link.pole }],
    ];
    return changes;
  });
