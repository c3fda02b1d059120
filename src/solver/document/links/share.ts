import { isDriven, type Known } from '../known.ts';
import { type Reader, readAt } from '../reader.ts';
import { boneName } from '../references.ts';
import type { Bone, ShareLink } from '../rig.ts';
import { needed, optional, record } from '../structures.ts';
import { exactly, finite, name, numberFrom } from '../values.ts';

export const readShare: Reader<ShareLink, Known> = record('a share', {
  name: needed(name),
  kind: needed(exactly('share')),
  weight: optional(finite),
  source: needed(boneName),
  fraction: needed(finite),
});

const undrivenFraction = numberFrom(-2, 2);

export function checkShare(link: ShareLink, bone: Bone, known: Known): void {
  if (!isDriven(known, bone.name, link.name, 'fraction')) readAt('fraction', undrivenFraction, link.fraction, known);
}
