import type { LinkKind as KindName, Link } from '../document/rig.ts';
import { aim } from './aim.ts';
import { follow } from './follow.ts';
import { limit } from './limit.ts';
import type { LinkKind } from './linkKind.ts';
import { reach } from './reach.ts';
import { share } from './share.ts';
import { span } from './span.ts';

/** Every kind of link. A new kind is one more file beside these, and its line here. */
export const KINDS: { [K in KindName]: LinkKind<Extract<Link, { kind: K }>> } = {
  follow,
  aim,
  span,
  share,
  limit,
  reach,
};

export const KIND_NAMES = Object.keys(KINDS) as KindName[];

/** The kind of a link, to be called with that link alone. */
export const kindOf = (link: Link): LinkKind<Link> => KINDS[link.kind] as unknown as LinkKind<Link>;
