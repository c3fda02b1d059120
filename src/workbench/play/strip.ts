import type { Pose, Rig } from '../../solver/document/rig.ts';
import { between } from './between.ts';

/** Poses one after the other, each a stretch of time from the one before. */
export interface Strip {
  readonly poses: readonly Pose[];
  /** Seconds from one pose to the next, at ordinary speed. */
  readonly seconds: number;
  /** Whether the way from one to the next is shown, or only the poses. */
  readonly moves: boolean;
}

/** The pose at a place along the strip: 0 is the first, 1 the second, 1.5 half way on. */
export function poseAt({ poses, moves }: Strip, place: number, rig: Rig): Pose {
  const last = poses.length - 1;
  const at = Math.min(Math.max(place, 0), last);
  const from = Math.floor(at);
  const share = at - from;
  if (!moves || share === 0) return poses[from]!;
  return settled(between(poses[from]!, poses[from + 1]!, share, defaultsOf(rig)), rig);
}

const switchesOf = (rig: Rig) =>
  rig.bones.flatMap(({ name, switches = [] }) => switches.map((own) => [`${name}.${own.name}`, own] as const));

const defaultsOf = (rig: Rig): ReadonlyMap<string, number> =>
  new Map(switchesOf(rig).map(([name, own]) => [name, own.default]));

/** A switch that does not slide stands at the nearer of its ends. */
function settled(pose: Pose, rig: Rig): Pose {
  if (!pose.switches) return pose;
  const known = new Map<string, ReturnType<typeof switchesOf>[number][1]>(switchesOf(rig));
  const switches = Object.entries(pose.switches).map(([name, value]) => {
    const own = known.get(name);
    if (!own || own.sliding) return [name, value];
    return [name, value - own.min <= own.max - value ? own.min : own.max];
  });
  return { ...pose, switches: Object.fromEntries(switches) };
}
