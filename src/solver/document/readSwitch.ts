import { type Reader, refuse } from './reader.ts';
import type { Switch } from './rig.ts';
import { needed, optional, record } from './structures.ts';
import { boolean, finite, name } from './values.ts';

const readFields: Reader<Switch> = record('a switch', {
  name: needed(name),
  min: needed(finite),
  max: needed(finite),
  default: needed(finite),
  sliding: optional(boolean),
});

export const readSwitch: Reader<Switch> = (value, known) => {
  const read = readFields(value, known);
  const { min, max } = read;
  if (min >= max) refuse(`min ${min}, not below max ${max}`, 'a min below max', ['min']);
  if (read.default < min || read.default > max) {
    refuse(String(read.default), `a number from ${min} to ${max}, the range of this switch`, ['default']);
  }
  return read;
};
