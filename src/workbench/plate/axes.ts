import type { Vec3 } from '../../solver/document/rig.ts';
import type { Drawing, Figure, Label, Stroke } from './drawing.ts';
import { AXES } from './extent.ts';
import { dot, plus, scaled } from './vector.ts';
import type { Extent, View } from './view.ts';

/** Thin ticked axes with their letters; one that points at the reader is left out. */
export function axesDrawing({ axes }: Pick<Extent, 'axes'>, view: View): Drawing {
  const step = tickStep(view);
  const figures: Figure[] = [];
  const labels: Label[] = [];
  for (const [i, along] of AXES.entries()) {
    if (Math.abs(dot(along, view.toward)) > 0.97) continue;
    const at = (metres: number) => plus(axes.foot, scaled(along, metres));
    const line: Stroke = { points: [at(-0.12 * axes.length), at(axes.length)], tone: 'edge', width: 0.8, dash: 'none' };
    figures.push({
      bone: null,
      leaves: [],
      at: axes.foot,
      strokes: [line, ...tickStrokes(at, axes.length, step, acrossIn(view, along), view)],
    });
    labels.push({ at: at(axes.length + 12 / view.scale), text: 'xyz'[i]!, tone: 'faint', rank: 5, italic: true });
  }
  return { figures, labels };
}

/** Metres between ticks: a round length at least 24 pixels wide. */
export function tickStep(view: Pick<View, 'scale'>): number {
  const least = 24 / view.scale;
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((factor) => factor * power).find((step) => step >= least * 0.999) ?? 10 * power;
}

function tickStrokes(at: (metres: number) => Vec3, length: number, step: number, side: Vec3, view: View): Stroke[] {
  return Array.from({ length: Math.floor(length / step + 1e-9) }, (_, i): Stroke => {
    const n = i + 1;
    const half = scaled(side, (n % 5 === 0 ? 4 : 2.5) / view.scale);
    const middle = at(n * step);
    return { points: [plus(middle, scaled(half, -1)), plus(middle, half)], tone: 'edge', width: 0.8, dash: 'none' };
  });
}

/** A direction in the view's plane across an axis as it is seen. */
function acrossIn(view: View, along: Vec3): Vec3 {
  const x = dot(along, view.right);
  const y = dot(along, view.up);
  const length = Math.sqrt(x * x + y * y) || 1;
  return plus(scaled(view.right, -y / length), scaled(view.up, x / length));
}
