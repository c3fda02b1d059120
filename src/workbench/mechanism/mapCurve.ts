import type { DriverMap } from '../../solver/document/rig.ts';
import { mapConstants, mapped } from '../../solver/drivers/map.ts';
import { BEYOND, labelText, type PlotFrame, plotFrame } from './plotFrame.ts';

const SAMPLES = 96;

export interface Plot {
  readonly frame: PlotFrame;
  /** Path data. */
  readonly curve: string;
  readonly axes: string;
  readonly keys: readonly (readonly [number, number])[];
  readonly labels: readonly { text: string; x: number; y: number; anchor: 'start' | 'middle' | 'end' }[];
  readonly span: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
}

/** The picture of a map, drawn through what the solver gives for it. */
export function plotOf(map: DriverMap, frame = plotFrame(map)): Plot {
  const constants = Float64Array.from(mapConstants(map));
  const first = map.keys[0]![0];
  const last = map.keys.at(-1)![0];
  const out = (last - first) * BEYOND;
  const xs = Array.from({ length: SAMPLES + 1 }, (_, i) => first - out + ((last - first + 2 * out) * i) / SAMPLES);
  const ys = xs.map((x) => mapped(constants, 0, x));
  const values = map.keys.map(([, y]) => y);
  const span = { x: [xs[0]!, xs.at(-1)!] as const, y: padded(Math.min(...values, ...ys), Math.max(...values, ...ys)) };
  const at = (x: number, y: number) => [across(frame, span.x, x), upward(frame, span.y, y)] as const;
  const points = xs.map((x, i) => at(x, ys[i]!));
  const base = frame.height - frame.bottom;
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return {
    frame,
    curve: points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join(''),
    axes: `M${frame.left} ${frame.top - 4}V${base}H${frame.width - frame.right + 4}`,
    keys: map.keys.map(([x, y]) => at(x, y)),
    labels: [
      ...[first, last].map((x) => ({ text: labelText(x), x: at(x, low)[0], y: base + 13, anchor: 'middle' as const })),
      ...(high > low ? [low, high] : [low]).map((y) => ({
        text: labelText(y),
        x: frame.left - 4,
        y: at(first, y)[1] + 4,
        anchor: 'end' as const,
      })),
    ],
    span,
  };
}

/** The key that a place on the plot stands for: between its neighbours, on a fiftieth of what the plot spans. */
export function keyAt(plot: Plot, map: DriverMap, index: number, px: number, py: number): readonly [number, number] {
  const { frame, span } = plot;
  const x = stepped(back(span.x, (px - frame.left) / widthIn(frame)), span.x);
  const y = stepped(back(span.y, (frame.height - frame.bottom - py) / heightIn(frame)), span.y);
  const gap = (span.x[1] - span.x[0]) / 50;
  const least = (map.keys[index - 1]?.[0] ?? Number.NEGATIVE_INFINITY) + gap;
  const most = (map.keys[index + 1]?.[0] ?? Number.POSITIVE_INFINITY) - gap;
  return [Math.min(most, Math.max(least, x)), y];
}

function across(frame: PlotFrame, [from, to]: readonly [number, number], x: number): number {
  return frame.left + ((x - from) / (to - from)) * widthIn(frame);
}

function upward(frame: PlotFrame, [from, to]: readonly [number, number], y: number): number {
  return frame.height - frame.bottom - ((y - from) / (to - from)) * heightIn(frame);
}

function widthIn({ width, left, right }: PlotFrame): number {
  return width - left - right;
}

function heightIn({ height, top, bottom }: PlotFrame): number {
  return height - top - bottom;
}

function back([from, to]: readonly [number, number], share: number): number {
  return from + Math.max(0, Math.min(1, share)) * (to - from);
}

function padded(least: number, most: number): readonly [number, number] {
  return most > least ? [least, most] : [least - 0.5, most + 0.5];
}

/** Rounded to the power of ten below a fiftieth of the span, so that dragged keys have short numbers. */
function stepped(value: number, [from, to]: readonly [number, number]): number {
  const step = 10 ** Math.floor(Math.log10((to - from) / 10));
  return Number((Math.round(value / step) * step).toPrecision(9));
}
