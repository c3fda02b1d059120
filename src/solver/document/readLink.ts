import { isDriven, type Known } from './known.ts';
import { readAim } from './links/aim.ts';
import { readFollow } from './links/follow.ts';
import { checkLimit, readLimit } from './links/limit.ts';
import { readReach } from './links/reach.ts';
import { checkShare, readShare } from './links/share.ts';
import { readSpan } from './links/span.ts';
import { type Reader, readAt, refuseValue } from './reader.ts';
import type { Bone, Link, LinkKind } from './rig.ts';
import { fieldOf, isObject } from './structures.ts';
import { numberFrom, oneOf } from './values.ts';

interface KindReader<L extends Link> {
  read: Reader<L, Known>;
  /** Rules between the link and the bone it is on. */
  check?: (link: L, bone: Bone, known: Known) => void;
}

/** The one place to name a kind of link: how its fields are read. */
const KINDS: { readonly [K in LinkKind]: KindReader<Extract<Link, { kind: K }>> } = {
  follow: { read: readFollow },
  aim: { read: readAim },
  span: { read: readSpan },
  share: { read: readShare, check: checkShare },
  limit: { read: readLimit, check: checkLimit },
  reach: { read: readReach },
};

const kindOf = oneOf(Object.keys(KINDS) as LinkKind[]);

/** A link by itself. */
export const readLink: Reader<Link, Known> = (value, known) => {
  if (!isObject(value)) return refuseValue(value, 'a link, an object with at least a name and a kind');
  const kind = readAt('kind', kindOf, fieldOf(value, 'kind'), known);
  return KINDS[kind].read(value, known);
};

const undrivenWeight = numberFrom(0, 1);

/** The rules between a link, its bone and the drivers. */
export function checkLink(link: Link, bone: Bone, known: Known): void {
  const { weight } = link;
  if (weight !== undefined && !isDriven(known, bone.name, link.name, 'weight')) {
    readAt('weight', undrivenWeight, weight, known);
  }
  const kind = KINDS[link.kind] as KindReader<Link>;
  kind.check?.(link, bone, known);
}
