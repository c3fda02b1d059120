import type { Axis } from '../../solver/document/rig.ts';
import { needed, optional } from '../../solver/document/structures.ts';
import { axis as axisReader } from '../../solver/document/vectors.ts';
import type { Where } from '../exercise/inputs.ts';
import { axisOf, pointOf } from '../measure/frame.ts';
import { lengthOf, worldAt, worldOffset } from '../subject.ts';
import type { BehaviourKind } from './kind.ts';
import { reflectedAxis } from './reflectedAxis.ts';
import { type RequirementBase, requirementReader, spokenList, where } from './requirement.ts';

export interface MeetsAt extends RequirementBase {
  kind: 'meets-at';
  /** Bones whose lines of gaze should meet. */
  bones: readonly string[];
  /** The axis they gaze along; default +z. */
  axis?: Axis;
  point: Where;
}

/** How far the lines of gaze pass by the point where they should meet: the farthest of them, millimetres. */
export const meetsAt: BehaviourKind<MeetsAt> = {
  kind: 'meets-at',
  about: 'behaviour',
  read: requirementReader<MeetsAt>('meets-at', {
    bones: needed(spokenList),
    axis: optional(axisReader),
    point: needed(where),
  }),
  unit: () => 'mm',
  bones: ({ bones, point }) => [...bones, point.bone],
  inputs: () => [],
  missed: ({ bones, point }, { measured, allowed, nameOf }) =>
    `${bones.length === 1 ? 'The line of gaze' : 'One of the lines of gaze'} of ${bones.map(nameOf).join(' and ')} passes ${nameOf(point.bone)} at ${measured}; ${allowed} is allowed.`,
  reflected: reflectedAxis,
  meter({ bones, axis = '+z', point }, subject) {
    const eyes = bones.map((bone) => worldOffset(subject, bone));
    const target = worldOffset(subject, point.bone);
    const along = (point.at ?? 0) * lengthOf(subject, point.bone);
    const [place, gaze] = [new Float64Array(3), new Float64Array(3)];
    return (values) => {
      const world = worldAt(subject, values);
      pointOf(world, target, along, place);
      return 1000 * Math.max(...eyes.map((eye) => passing(world, eye, axis, place, gaze)));
    };
  },
};

/** Metres between a point and the ray from a bone's base along its axis; a point behind is as far as its base. */
function passing(world: Float64Array, eye: number, axis: Axis, point: Float64Array, gaze: Float64Array): number {
  axisOf(world, eye, axis, gaze);
  const [x, y, z] = [0, 1, 2].map((i) => point[i]! - world[eye + 9 + i]!) as [number, number, number];
  const ahead = Math.max(0, x * gaze[0]! + y * gaze[1]! + z * gaze[2]!);
  const [dx, dy, dz] = [x - ahead * gaze[0]!, y - ahead * gaze[1]!, z - ahead * gaze[2]!];
  return Math.sqrt(dx * dx + dy * dy + dz * dz);
}
