import { angleBetweenDeg, axisOf, pointOf } from '../measure/frame.ts';
import { worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind, OfKind } from './kind.ts';

type AimsAt = OfKind<'aims-at'>;

/** Degrees between an axis of the bone and the direction from its base to the target; 0 while they coincide. */
export const aimsAt: BehaviourKind<AimsAt> = {
  kind: 'aims-at',
  about: 'behaviour',
  unit: () => 'degrees',
  bones: ({ bone, target }) => [bone, target.bone],
  inputs: () => [],
  missed: ({ bone, target }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} points ${measured} away from ${nameOf(target.bone)}; ${allowed} is allowed.`,
  meter({ bone, axis = '+z', target }, subject) {
    const self = worldOffset(subject, bone);
    const length = lengthOf(subject, target.bone);
    const other = worldOffset(subject, target.bone);
    const pointing = new Float64Array(3);
    const toward = new Float64Array(3);
    return (values) => {
      const world = worldAt(subject, values);
      axisOf(world, self, axis, pointing);
      pointOf(world, other, (target.at ?? 0) * length, toward);
      for (let i = 0; i < 3; i++) toward[i] = toward[i]! - world[self + 9 + i]!;
      return angleBetweenDeg(pointing, toward);
    };
  },
};

function lengthOf(subject: Parameters<typeof worldOffset>[0], spoken: string): number {
  return subject.rig.bones[worldOffset(subject, spoken) / 12]!.rest.length;
}
