import type { Solved } from '../pose/solved.ts';
import { frameAt, pointOf } from './frame.ts';
import { project, type View } from './view.ts';

/** The bone whose line from base to tip passes nearest, within 16 pixels. */
export function nearestBone({ rig, world }: Solved, view: View, x: number, y: number): string | null {
  let best: { bone: string; far: number } | null = null;
  for (const [i, bone] of rig.bones.entries()) {
    const frame = frameAt(world, i);
    const [ax, ay] = project(view, frame.base);
    const [bx, by] = project(view, pointOf(frame, 0, 0, bone.rest.length));
    const length = (bx - ax) ** 2 + (by - ay) ** 2;
    const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
    const far = Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y);
    if (far < 16 && (!best || far < best.far)) best = { bone: bone.name, far };
  }
  return best?.bone ?? null;
}
