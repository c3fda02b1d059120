import { needed } from '../../solver/document/structures.ts';
import { worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type RequirementBase, requirementReader, spoken } from './requirement.ts';

export interface KeepsSize extends RequirementBase {
  kind: 'keeps-size';
  bone: string;
}

/** How much longer or shorter a bone is along any of its axes than at its own rest, in percent. */
export const keepsSize: BehaviourKind<KeepsSize> = {
  kind: 'keeps-size',
  about: 'behaviour',
  read: requirementReader<KeepsSize>('keeps-size', { bone: needed(spoken) }),
  unit: () => '%',
  bones: ({ bone }) => [bone],
  inputs: () => [],
  missed: ({ bone }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} should keep its size, but changes it by ${measured}; ${allowed} is allowed.`,
  meter({ bone }, subject) {
    const offset = worldOffset(subject, bone);
    return (values) => {
      const world = worldAt(subject, values);
      return 100 * Math.max(offBy(world, offset), offBy(world, offset + 3), offBy(world, offset + 6));
    };
  },
};

/** By how much a column is not as long as at rest: a rest transform is a rotation, its columns of length 1. */
function offBy(world: Float64Array, at: number): number {
  const [x, y, z] = [world[at]!, world[at + 1]!, world[at + 2]!];
  return Math.abs(Math.sqrt(x * x + y * y + z * z) - 1);
}
