import type { Known } from '../known.ts';
import { type Reader, refuse } from '../reader.ts';
import { boneName, point } from '../references.ts';
import type { AimLink, UpToward } from '../rig.ts';
import { needed, optional, record, shapes } from '../structures.ts';
import { exactly, finite, name } from '../values.ts';
import { axis, axisVector, direction, sineBetween } from '../vectors.ts';

/** Radians; an up axis this close to the line of the aim axis says nothing about roll. */
const IN_LINE = 1e-6;

const toward: Reader<UpToward, Known> = shapes<UpToward, Known>('a point {bone, at}, a {direction} or a {bone, axis}', {
  direction: record('a direction', { direction: needed(direction) }),
  axis: record("a bone's axis", { bone: needed(boneName), axis: needed(axis) }),
  bone: point,
});

const readFields: Reader<AimLink, Known> = record('an aim', {
  name: needed(name),
  kind: needed(exactly('aim')),
  weight: optional(finite),
  target: needed(point),
  axis: optional(axis),
  up: optional(record('an up', { axis: needed(axis), toward: needed(toward) })),
});

export const readAim: Reader<AimLink, Known> = (value, known) => {
  const link = readFields(value, known);
  const aimAxis = link.axis ?? '+z';
  if (link.up && sineBetween(axisVector(link.up.axis), axisVector(aimAxis)) <= IN_LINE) {
    refuse(`an up axis in line with the aim axis ${aimAxis}`, 'an axis across the aim axis', ['up', 'axis']);
  }
  return link;
};
