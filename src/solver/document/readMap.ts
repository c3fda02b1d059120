import { type Reader, refuse, within } from './reader.ts';
import type { DriverMap, MapShape } from './rig.ts';
import { list, needed, optional, record } from './structures.ts';
import { finite, numberFrom, oneOf, tuple } from './values.ts';

type Four = readonly [number, number, number, number];

const fourNumbers = tuple<Four>(4, 'a bezier [x1, y1, x2, y2]', finite);
const easingX = numberFrom(0, 1);

const bezier: Reader<Four> = (value, known) => {
  const four = fourNumbers(value, known);
  for (const i of [0, 2]) within([i], () => easingX(four[i], known));
  return four;
};

const namedShape = oneOf(['straight', 'eased', 'stepped']);
const curve: Reader<{ bezier: Four }> = record('a bezier shape', { bezier: needed(bezier) });

const shape: Reader<MapShape> = (value, known) =>
  typeof value === 'object' && value !== null ? curve(value, known) : namedShape(value, known);

const someKeys = list('keys', tuple<readonly [number, number]>(2, 'a key [x, y]', finite), { least: 2 });

const keys: Reader<DriverMap['keys']> = (value, known) => {
  const read = someKeys(value, known);
  for (let i = 1; i < read.length; i++) {
    const [before, x] = [read[i - 1]![0], read[i]![0]];
    if (x <= before) refuse(`${x} after ${before}`, 'keys that rise in x', [i, 0]);
  }
  return read;
};

export const readMap: Reader<DriverMap> = record('a map', {
  keys: needed(keys),
  shape: optional(shape),
  beyond: optional(oneOf(['hold', 'extend'])),
});
