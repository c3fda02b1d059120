import type { Subject } from '../subject.ts';
import type { Asked } from './asked.ts';
import { type Canonical, heldText } from './canonical.ts';
import { type Listed, listedAsTheyAre } from './listed.ts';
import { held } from './probes.ts';
import { singularProbes } from './singularProbes.ts';

/** How far to look: the canonical ladder alone, or all that can be found. */
export type Depth = 'ladder' | 'hunt';

/** Behaviours that are measured in the same poses. */
export interface Group {
  readonly asked: readonly Asked[];
  /** The canonical poses, and for kinds that choose none of their own: near singular places, and the fill. */
  readonly sheets: readonly Listed[];
  /** Of each behaviour what was measured in each pose of each sheet in turn. */
  readonly measured: readonly Float64Array[];
}

/** Behaviours that take the ladder, together where they hold the same. */
export function onLadder(all: readonly Asked[], subject: Subject, canonical: Canonical, depth: Depth): Group[] {
  const asked = all.filter(({ kind }) => !kind.probes);
  if (asked.length === 0) return [];
  const singular = depth === 'hunt' ? singularProbes(subject, canonical.ladder) : [];
  return together(asked, ({ requirement }) => heldText(requirement)).map((group) => {
    const { requirement } = group[0]!;
    const ladder = canonical.ladderFor(requirement, subject);
    if (depth === 'ladder') return groupOf(group, [ladder]);
    const near = listedAsTheyAre(singular.map((probe) => held(requirement, subject, probe)));
    return groupOf(group, [ladder, near, canonical.fillFor(requirement, subject)]);
  });
}

/** Behaviours that choose their own probes, together where they choose the same. */
export function onTheirOwn(all: readonly Asked[], subject: Subject, canonical: Canonical): Group[] {
  const sheetOf = ({ requirement, kind }: Asked) => canonical.ownFor(requirement, kind, subject);
  const asked = all.filter(({ kind }) => kind.probes);
  return together(asked, sheetOf).map((group) => groupOf(group, [sheetOf(group[0]!)]));
}

function together<Key>(asked: readonly Asked[], keyOf: (one: Asked) => Key): Asked[][] {
  const groups = new Map<Key, Asked[]>();
  for (const one of asked) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}

function groupOf(asked: readonly Asked[], sheets: readonly Listed[]): Group {
  const count = sheets.reduce((sum, { list }) => sum + list.length, 0);
  return { asked, sheets, measured: asked.map(() => new Float64Array(count)) };
}
