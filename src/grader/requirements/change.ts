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
  return (values) => {
    still.set(values);
    for (const index of indices) still[index] = subject.inputs[index]!.rest;
    return distance(worldAt(subject, still), worldAt(subject, values));
  };
}

/** How far one bone is from itself in two worlds of a subject. */
export function distanceMeter(subject: Subject, bone: string, by: By): (a: Float64Array, b: Float64Array) => number {
  const offset = worldOffset(subject, bone);
  if (by === 'turn') return (a, b) => turnBetweenDeg(a, offset, b, offset);
  const length = lengthOf(subject, bone);
  return (a, b) => moveBetweenMm(a, offset, b, offset, length);
}
