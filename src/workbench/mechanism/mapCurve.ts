import type { DriverMap } from '../../solver/document/rig.ts';
import { mapConstants, mapped } from '../../solver/drivers/map.ts';
import { numberText } from '../sentence/piece.ts';

/** Drawing units of a plot. */
export const SIZE = { width: 132, height: 96 };
const EDGE = { left: 22, right: 12, top: 10, bottom: 18 };
const SAMPLES = 96;
/** How far beyond its keys a map is drawn, as a share of their width. */
const BEYOND = 0.12;

export interface Plot {
  /** Path data. */
  readonly curve: string;
  readonly axes: string;
  readonly keys: readonly (readonly [number, number])[];
  readonly labels: readonly { text: string; x: number; y: number; anchor: 'start' | 'middle' | 'end' }[];
  readonly span: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
}

/** The picture of a map, drawn through what the solver gives for it. */
export function plotOf(map: DriverMap): Plot {
  const constants = Float64Array.from(mapConstants(map));
  const first = map.keys[0]![0];
  const last = map.keys.at(-1)![0];
  const out = (last - first) * BEYOND;
  const xs = Array.from({ length: SAMPLES + 1 }, (_, i) => first - out + ((last - first + 2 * out) * i) / SAMPLES);
  const ys = xs.map((x) => mapped(constants, 0, x));
  const values = map.keys.map(([, y]) => y);
  const span = { x: [xs[0]!, xs.at(-1)!] as const, y: padded(Math.min(...values, ...ys), Math.max(...values, ...ys)) };
  const at = (x: number, y: number) => [across(span.x, x), upward(span.y, y)] as const;
  const points = xs.map((x, i) => at(x, ys[i]!));
  const base = SIZE.height - EDGE.bottom;
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return {
    curve: points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join(''),
    axes: `M${EDGE.left} ${EDGE.top - 4}V${base}H${SIZE.width - EDGE.right + 4}`,
    keys: map.keys.map(([x, y]) => at(x, y)),
    labels: [
      { text: numberText(first), x: across(span.x, first), y: base + 13, anchor: 'middle' },
      { text: numberText(last), x: across(span.x, last), y: base + 13, anchor: 'middle' },
      { text: numberText(low), x: EDGE.left - 4, y: upward(span.y, low) + 4, anchor: 'end' },
      ...(high > low
        ? [{ text: numberText(high), x: EDGE.left - 4, y: upward(span.y, high) + 4, anchor: 'end' as const }]
        : []),
    ],
    span,
  };
}

/** The key that a place on the plot stands for: between its neighbours, on a fiftieth of what the plot spans. */
export function keyAt(plot: Plot, map: DriverMap, index: number, px: number, py: number): readonly [number, number] {
  const x = stepped(back(plot.span.x, (px - EDGE.left) / (SIZE.width - EDGE.left - EDGE.right)), plot.span.x);
  const y = stepped(
    back(plot.span.y, (SIZE.height - EDGE.bottom - py) / (SIZE.height - EDGE.top - EDGE.bottom)),
    plot.span.y,
  );
  const gap = (plot.span.x[1] - plot.span.x[0]) / 50;
  const least = (map.keys[index - 1]?.[0] ?? Number.NEGATIVE_INFINITY) + gap;
  const most = (map.keys[index + 1]?.[0] ?? Number.POSITIVE_INFINITY) - gap;
  return [Math.min(most, Math.max(least, x)), y];
}

function across([from, to]: readonly [number, number], x: number): number {
  return EDGE.left + ((x - from) / (to - from)) * (SIZE.width - EDGE.left - EDGE.right);
}

function upward([from, to]: readonly [number, number], y: number): number {
  return SIZE.height - EDGE.bottom - ((y - from) / (to - from)) * (SIZE.height - EDGE.top - EDGE.bottom);
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
