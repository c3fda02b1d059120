import type { Vec3 } from '../../solver/document/rig.ts';
import type { Drawing, Figure, Label, Stroke } from './drawing.ts';
import { axisLength, sizeOf } from './extent.ts';
import { dot, plus, scaled } from './vector.ts';
import type { Extent, View } from './view.ts';

const AXES: readonly { letter: string; along: Vec3 }[] = [
  { letter: 'x', along: [1, 0, 0] },
  { letter: 'y', along: [0, 1, 0] },
  { letter: 'z', along: [0, 0, 1] },
];

/** Thin axes through rig space's origin, ticked, with their letters; one that points at the reader is left out. */
export function axesDrawing(extent: Extent, view: View): Drawing {
  const step = tickStep(view);
  const figures: Figure[] = [];
  const labels: Label[] = [];
  for (const { letter, along } of AXES) {
    if (Math.abs(dot(along, view.toward)) > 0.97) continue;
    const to = axisLength(sizeOf(extent));
    const from = -0.12 * to;
    figures.push({
      bone: null,
      leaves: [],
      at: [0, 0, 0],
      strokes: [axisStroke(along, from, to), ...tickStrokes(along, from, to, step, view)],
    });
    labels.push({ at: scaled(along, to + 12 / view.scale), text: letter, tone: 'faint', rank: 5, italic: true });
  }
  return { figures, labels };
}

/** Metres between ticks: a round length at least 24 pixels wide. */
export function tickStep(view: Pick<View, 'scale'>): number {
  const least = 24 / view.scale;
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((factor) => factor * power).find((step) => step >= least * 0.999) ?? 10 * power;
}

function axisStroke(along: Vec3, from: number, to: number): Stroke {
  return { points: [scaled(along, from), scaled(along, to)], tone: 'edge', width: 0.8, dash: 'none' };
}

function tickStrokes(along: Vec3, from: number, to: number, step: number, view: View): Stroke[] {
  const strokes: Stroke[] = [];
  const side = acrossIn(view, along);
  for (let n = Math.ceil(from / step); n * step <= to; n++) {
    if (n === 0) continue;
    const at = scaled(along, n * step);
    const half = scaled(side, (n % 5 === 0 ? 4 : 2.5) / view.scale);
    strokes.push({ points: [plus(at, scaled(half, -1)), plus(at, half)], tone: 'edge', width: 0.8, dash: 'none' });
  }
  return strokes;
}

/** A direction in the view's plane across an axis as it is seen. */
function acrossIn(view: View, along: Vec3): Vec3 {
  const x = dot(along, view.right);
  const y = dot(along, view.up);
  const length = Math.sqrt(x * x + y * y) || 1;
  return plus(scaled(view.right, -y / length), scaled(view.up, x / length));
}
