import { needed } from '../../solver/document/structures.ts';
import type { Where } from '../exercise/inputs.ts';
import { pointOf } from '../measure/frame.ts';
import { restValues } from '../probe/boundInput.ts';
import { lengthOf, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { type RequirementBase, requirementReader, spoken, where } from './requirement.ts';

export interface PivotAt extends RequirementBase {
  kind: 'pivot-at';
  bone: string;
  point: Where;
}

/** Millimetres at rest between a bone's base, about which it turns, and where that should be. */
export const pivotAt: BehaviourKind<PivotAt> = {
  kind: 'pivot-at',
  about: 'behaviour',
  read: requirementReader<PivotAt>('pivot-at', { bone: needed(spoken), point: needed(where) }),
  unit: () => 'mm',
  bones: ({ bone, point }) => [bone, point.bone],
  inputs: () => [],
  missed: ({ bone, point }, { measured, allowed, nameOf }) =>
    `${nameOf(bone)} turns about a point ${measured} from where it should at ${nameOf(point.bone)}; ${allowed} is allowed.`,
  meter({ bone, point }, subject) {
    const self = worldOffset(subject, bone);
    const other = worldOffset(subject, point.bone);
    const along = (point.at ?? 0) * lengthOf(subject, point.bone);
    const place = new Float64Array(3);
    return (values) => {
      const world = worldAt(subject, values);
      pointOf(world, other, along, place);
      const [x, y, z] = [0, 1, 2].map((i) => world[self + 9 + i]! - place[i]!) as [number, number, number];
      return 1000 * Math.sqrt(x * x + y * y + z * z);
    };
  },
  probes: (_, subject) => [restValues(subject.inputs)],
};
