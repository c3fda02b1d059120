import type { Known } from '../known.ts';
import type { Reader } from '../reader.ts';
import { point } from '../references.ts';
import type { ReachLink } from '../rig.ts';
import { needed, optional, record } from '../structures.ts';
import { exactly, finite, name } from '../values.ts';

export const readReach: Reader<ReachLink, Known> = record('a reach', {
  name: needed(name),
  kind: needed(exactly('reach')),
  weight: optional(finite),
  target: needed(point),
  pole: optional(point),
});
