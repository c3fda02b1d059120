import { type Reader, refuse } from '../reader.ts';
import type { Bone, LimitLink, Vec3 } from '../rig.ts';
import { needed, optional, record } from '../structures.ts';
import { exactly, finite, name, numberFrom, tuple } from '../values.ts';
import { vector } from '../vectors.ts';

type Bounds = readonly [number, number];

function degrees(most: number): Reader<Bounds> {
  const read = tuple<Bounds>(2, 'bounds [min, max]', numberFrom(-most, most, ' degrees'));
  return (value, known) => {
    const bounds = read(value, known);
    if (bounds[0] > bounds[1]) refuse(`min ${bounds[0]}, above max ${bounds[1]}`, 'min at most max', [0]);
    return bounds;
  };
}

const readMove: Reader<{ min: Vec3; max: Vec3 }> = record('bounds of move', {
  min: needed(vector('the least move [x, y, z], in metres')),
  max: needed(vector('the largest move [x, y, z], in metres')),
});

const move: Reader<{ min: Vec3; max: Vec3 }> = (value, known) => {
  const bounds = readMove(value, known);
  for (const [i, min] of bounds.min.entries()) {
    const max = bounds.max[i]!;
    if (min > max) refuse(`min ${min}, above max ${max}`, 'min at most max', ['min', i]);
  }
  return bounds;
};

const readFields: Reader<LimitLink> = record('a limit', {
  name: needed(name),
  kind: needed(exactly('limit')),
  weight: optional(finite),
  move: optional(move),
  yaw: optional(degrees(180)),
  pitch: optional(degrees(90)),
  twist: optional(degrees(180)),
  cone: optional(numberFrom(0, 180, ' degrees')),
});

const BOUNDS = ['move', 'yaw', 'pitch', 'twist', 'cone'] as const;

export const readLimit: Reader<LimitLink> = (value, known) => {
  const link = readFields(value, known);
  if (BOUNDS.every((bound) => link[bound] === undefined)) {
    refuse('a limit without bounds', 'at least one of move, yaw, pitch, twist and cone');
  }
  return link;
};

export function checkLimit(link: LimitLink, bone: Bone): void {
  if (link.move && bone.attach === 'tip') {
    refuse("bounds of move on a bone attached to its parent's tip", 'no move, or "attach": "free"', ['move']);
  }
}
