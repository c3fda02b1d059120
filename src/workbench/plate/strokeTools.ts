import type { Vec3 } from '../../solver/document/rig.ts';
import type { Dash, Stroke, Tone } from './drawing.ts';
import { type Frame, pointOf } from './frame.ts';
import type { Manner } from './manner.ts';
import type { Flat } from './outline.ts';
import { plus } from './vector.ts';

export function flat(frame: Frame, outline: Flat): Vec3[] {
  return outline.map(([x, z]) => pointOf(frame, x, 0, z));
}

export function line(points: readonly Vec3[], tone: Tone, width: number, dash: Dash = 'none'): Stroke {
  return { points, tone, width, dash };
}

export function closed(points: readonly Vec3[], tone: Tone, width: number, dash: Dash = 'none'): Stroke {
  return line([...points, points[0]!], tone, width, dash);
}

/** A dot at the base: a small square cross-stroke as wide as long. */
export function dotAt(frame: Frame, tone: Tone, manner: Manner): Stroke[] {
  const r = 0.9 * manner.pixel;
  return [line([plus(frame.base, [-r, 0, 0]), plus(frame.base, [r, 0, 0])], tone, 5)];
}

/** What is chosen is outlined twice and keeps its colour. */
export function twice(manner: Manner, outline: (grown: number) => Vec3[]): Stroke[] {
  if (!manner.chosen) return [];
  return [4, 8].map((pixels) => closed(outline(pixels * manner.pixel), 'ink', 1));
}
