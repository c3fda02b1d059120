import type { Rig, Vec3 } from '../../solver/document/rig.ts';
import { tipOf } from '../edit/setRest.ts';
import type { Extent } from './view.ts';

/** What a plate must show: the rig at rest with its mesh, and some room to move in. */
export function extentOf(rig: Rig): Extent {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  const take = (point: Vec3) => {
    for (const i of [0, 1, 2] as const) {
      low[i] = Math.min(low[i], point[i]);
      high[i] = Math.max(high[i], point[i]);
    }
  };
  for (const { rest } of rig.bones) {
    take(rest.base);
    take(tipOf(rest));
  }
  const positions = rig.mesh?.positions ?? [];
  for (let i = 0; i + 2 < positions.length; i += 3) take([positions[i]!, positions[i + 1]!, positions[i + 2]!]);
  const widest = Math.max(...high.map((value, i) => value - low[i]!));
  if (!Number.isFinite(widest)) return { centre: [0, 0, 0], half: [1, 1, 1] };
  const room = Math.max(0.05, widest * 0.12);
  return {
    centre: low.map((value, i) => (value + high[i]!) / 2) as unknown as Vec3,
    half: low.map((value, i) => (high[i]! - value) / 2 + room) as unknown as Vec3,
  };
}

/** The longest half-width: a length to measure strokes and steps by. */
export function sizeOf(extent: Extent): number {
  return Math.max(...extent.half);
}
