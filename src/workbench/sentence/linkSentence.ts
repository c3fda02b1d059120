import type { Link, LinkKind } from '../../solver/document/rig.ts';
import { setLinkKind } from '../edit/changeLink.ts';
import { aimSentence } from './aim.ts';
import { followSentence } from './follow.ts';
import { limitSentence } from './limit.ts';
import { fixed, name, type Option, offersLast, type Sentence, text } from './piece.ts';
import { reachSentence } from './reach.ts';
import type { Scope } from './scope.ts';
import { shareSentence } from './share.ts';
import { spanSentence } from './span.ts';
import { weightPieces } from './weight.ts';

export const KINDS: readonly (Option & { value: LinkKind })[] = [
  { value: 'follow', says: 'follows' },
  { value: 'aim', says: 'aims' },
  { value: 'span', says: 'spans' },
  { value: 'share', says: 'shares' },
  { value: 'limit', says: 'is limited' },
  { value: 'reach', says: 'reaches' },
];

/** What a new link does, before it says more. */
export const DOES: Readonly<Record<LinkKind, string>> = {
  follow: 'follows',
  aim: 'aims at',
  span: 'spans to',
  share: 'shares the twist of',
  limit: 'is limited',
  reach: 'reaches for',
};

/** A link as a sentence: "vane_left aims its +z at the base of wind_left, weight driven by let_go, 1 → 0." */
export function linkSentence(scope: Scope, bone: string, link: Link): Sentence {
  const sentence = offersLast([
    name(bone),
    text(' '),
    {
      is: 'choice',
      label: `kind of ${link.name} on ${bone}`,
      value: link.kind,
      options: KINDS,
      edit: (kind) => setLinkKind(bone, link.name, kind as LinkKind),
    },
    text(' '),
    ...rest(scope, bone, link),
    ...weightPieces(scope, bone, link),
    text('.'),
  ]);
  return isKept(scope, bone, link.name) ? fixed(sentence) : sentence;
}

/** Whether the exercise keeps this link as it is. */
export function isKept(scope: Scope, bone: string, link: string): boolean {
  return scope.keeps(bone, 'links') && scope.given(bone, link);
}

function rest(scope: Scope, bone: string, link: Link): Sentence {
  switch (link.kind) {
    case 'follow':
      return followSentence(scope, bone, link);
    case 'aim':
      return aimSentence(scope, bone, link);
    case 'span':
      return spanSentence(scope, bone, link);
    case 'share':
      return shareSentence(scope, bone, link);
    case 'limit':
      return limitSentence(bone, link);
    case 'reach':
      return reachSentence(scope, bone, link);
  }
}
