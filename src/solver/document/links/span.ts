import type { Known } from '../known.ts';
import { type Reader, refuse } from '../reader.ts';
import { point } from '../references.ts';
import type { SpanLink } from '../rig.ts';
import { needed, optional, record } from '../structures.ts';
import { exactly, finite, lengthAbove0, name, number, oneOf } from '../values.ts';

const ratio = number('a ratio above 0', (value) => value > 0);

const readFields: Reader<SpanLink, Known> = record('a span', {
  name: needed(name),
  kind: needed(exactly('span')),
  weight: optional(finite),
  target: needed(point),
  sides: optional(oneOf(['free', 'volume'])),
  restLength: optional(lengthAbove0),
  least: optional(ratio),
  most: optional(ratio),
});

export const readSpan: Reader<SpanLink, Known> = (value, known) => {
  const link = readFields(value, known);
  const { least, most } = link;
  if (least !== undefined && most !== undefined && least > most) {
    refuse(`least ${least}, above most ${most}`, `a ratio of at most ${most}`, ['least']);
  }
  return link;
};
