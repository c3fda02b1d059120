import type { Vec3 } from '../../../solver/document/rig.ts';
import type { Grip } from '../grip.ts';
import type { Pixel } from '../placeLabels.ts';
import { dot } from '../vector.ts';
import { project, type View } from '../view.ts';

/** Pixels from the bone to a bead, and the radius of a protractor. */
export const REACH = 62;
/** How near the plate's edge a bead may stand. */
const EDGE = 14;

/** How a metre along an axis runs on the plate, in pixels. */
export function runOf(axis: Vec3, view: View): Pixel {
  return [dot(axis, view.right) * view.scale, -dot(axis, view.up) * view.scale];
}

/**
 * Where a bead stands from its bone, in pixels: along its axis, or against it where it would leave the plate; null for
 * a rail that points at the reader.
 */
export function beadFrom(run: Pixel, [x, y]: Pixel, view: Pick<View, 'width' | 'height'>): Pixel | null {
  const length = Math.hypot(run[0], run[1]);
  if (length < 1e-6) return null;
  const [dx, dy] = [(run[0] / length) * REACH, (run[1] / length) * REACH];
  return isOn(x + dx, y + dy, view) || !isOn(x - dx, y - dy, view) ? [dx, dy] : [-dx, -dy];
}

function isOn(x: number, y: number, { width, height }: Pick<View, 'width' | 'height'>): boolean {
  return x > EDGE && y > EDGE && x < width - EDGE && y < height - EDGE;
}

/** Centres of the handles that move a bone, for labels to keep clear of. */
export function handlePlaces({ origin, move }: Grip, view: View): Pixel[] {
  const [x, y] = project(view, origin);
  const beads = move.axes.flatMap((axis, i): Pixel[] => {
    const from = move.free[i] ? beadFrom(runOf(axis, view), [x, y], view) : null;
    return from ? [[x + from[0], y + from[1]]] : [];
  });
  return [[x, y], ...beads];
}
