import { moveBetweenMm, turnBetweenDeg } from '../measure/frame.ts';
import { lengthOf, type Subject, worldAt, worldOffset } from '../subject.ts';
import type { Meter } from './kind.ts';
import type { By } from './requirement.ts';

/** How far a bone is from where it would be with the named inputs at rest, all others as they are. */
export function changeMeter(
  { bone, by }: { bone: string; by: By },
  subject: Subject,
  moving: readonly string[],
): Meter {
  const distance = distanceMeter(subject, bone, by);
  const indices = moving.map((id) => subject.inputIndex.get(id)!);
  const still = new Float64Array(subject.inputs.length);
  const before = new Float64Array(12);
  return (values) => {
    still.set(values);
    for (const index of indices) still[index] = subject.inputs[index]!.rest;
    distance.keep(still, before);
    return distance.from(before, values);
  };
}

/** Transforms of one bone, kept and compared. */
export function distanceMeter(subject: Subject, bone: string, by: By) {
  const offset = worldOffset(subject, bone);
  const length = lengthOf(subject, bone);
  const after = new Float64Array(12);
  const keep = (values: Float64Array, into: Float64Array) => {
    const world = worldAt(subject, values);
    for (let i = 0; i < 12; i++) into[i] = world[offset + i]!;
  };
  const between = (a: Float64Array, b: Float64Array) => {
    return by === 'turn' ? turnBetweenDeg(a, 0, b, 0) : moveBetweenMm(a, 0, b, 0, length);
  };
  const from = (before: Float64Array, values: Float64Array) => {
    keep(values, after);
    return between(before, after);
  };
  return { keep, between, from };
}
