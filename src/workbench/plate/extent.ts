import type { Rig, Vec3 } from '../../solver/document/rig.ts';
import { tipOf } from '../edit/setRest.ts';
import type { Solved } from '../pose/solved.ts';
import { frameAt, pointOf } from './frame.ts';
import { lengthOf, plus, scaled } from './vector.ts';
import type { Extent } from './view.ts';

const NOTHING: readonly Vec3[] = [
  [-1, -1, -1],
  [1, 1, 1],
];

/** What a plate must show: the rig at rest, with its mesh. */
export function extentOf(rig: Rig): Extent {
  const ends = rig.bones.flatMap(({ rest }) => [rest.base, tipOf(rest)]);
  const points = ends.length > 0 ? [...ends, ...vertices(rig.mesh?.positions ?? [])] : NOTHING;
  const low = [0, 1, 2].map((i) => points.reduce((least, point) => Math.min(least, point[i]!), Infinity));
  const high = [0, 1, 2].map((i) => points.reduce((most, point) => Math.max(most, point[i]!), -Infinity));
  const half = low.map((value, i) => Math.max(0.02, (high[i]! - value) / 2)) as unknown as Vec3;
  const size = Math.max(...half);
  const axes = { foot: axesFoot(low as unknown as Vec3, high as unknown as Vec3, size), length: 0.55 * size };
  return {
    centre: low.map((value, i) => (value + high[i]!) / 2) as unknown as Vec3,
    half,
    axes,
    points: [...points, ...AXES.map((along) => plus(axes.foot, scaled(along, axes.length)))],
  };
}

/** Where the bones of a posed rig begin and end. */
export function endsOf({ rig, world }: Solved): Vec3[] {
  return rig.bones.flatMap((bone, i) => {
    const frame = frameAt(world, i);
    return [frame.base, pointOf(frame, 0, 0, bone.rest.length)];
  });
}

/** The axes of rig space, by which the way to a point is told. */
export const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Where the axes are drawn from: rig space's origin, or the rig's low corner where that would be far off. */
function axesFoot(low: Vec3, high: Vec3, size: number): Vec3 {
  const off = low.map((value, i) => Math.max(value, -high[i]!, 0)) as unknown as Vec3;
  return lengthOf(off) > 0.4 * size ? low : [0, 0, 0];
}

/** The longest half-width: a length to measure strokes and steps by. */
export function sizeOf(extent: Extent): number {
  return Math.max(...extent.half);
}

function vertices(positions: readonly number[]): Vec3[] {
  return Array.from({ length: Math.floor(positions.length / 3) }, (_, i) => [
    positions[3 * i]!,
    positions[3 * i + 1]!,
    positions[3 * i + 2]!,
  ]);
}
