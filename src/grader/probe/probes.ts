import { boneOf } from '../bind.ts';
import { pointOf } from '../measure/frame.ts';
import type { Requirement } from '../requirements/table.ts';
import type { Subject } from '../subject.ts';
import { worldAt, worldOffset } from '../subject.ts';

/** The probe with the inputs that the requirement holds (`at`) at their values; itself where none is held. */
export function held(requirement: Requirement, subject: Subject, probe: Float64Array): Float64Array {
  if (!requirement.at) return probe;
  const values = probe.slice();
  for (const [id, value] of Object.entries(requirement.at)) values[subject.inputIndex.get(id)!] = value;
  return values;
}

/** Inputs that may be moved while the requirement is hunted: not held, not stuck. */
export function freeInputs(requirement: Requirement, subject: Subject): number[] {
  const at = requirement.at ?? {};
  return subject.inputs.flatMap((input, index) => (input.stuck || Object.hasOwn(at, input.id) ? [] : [index]));
}

/** A test for the exercise's keep-out zones, or null; a zone whose bones nothing stands for keeps nothing out. */
export function keepOutTest(subject: Subject): ((values: Float64Array) => boolean) | null {
  const stands = (spoken: string) => subject.program.boneIndex.has(boneOf(spoken, subject.binding) ?? '');
  const zones = subject.exercise.keepOut
    .filter(({ point, near }) => stands(point.bone) && stands(near.bone))
    .map(({ point, near, within }) => ({ a: placeOf(point), b: placeOf(near), within }));
  if (zones.length === 0) return null;
  const a = new Float64Array(3);
  const b = new Float64Array(3);
  return (values) => {
    const world = worldAt(subject, values);
    return zones.some((zone) => {
      pointOf(world, zone.a.offset, zone.a.along, a);
      pointOf(world, zone.b.offset, zone.b.along, b);
      const [x, y, z] = [a[0]! - b[0]!, a[1]! - b[1]!, a[2]! - b[2]!];
      return x * x + y * y + z * z < zone.within * zone.within;
    });
  };

  function placeOf({ bone, at = 0 }: { bone: string; at?: number }) {
    const offset = worldOffset(subject, bone);
    return { offset, along: at * subject.rig.bones[offset / 12]!.rest.length };
  }
}
