import type { DriverMap } from '../../solver/document/rig.ts';
import { numberText } from '../sentence/piece.ts';

/** Drawing units, which are pixels: a plot as large as its labels need, and the edges around what is drawn. */
export interface PlotFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How far beyond its keys a map is drawn, as a share of their width. */
export const BEYOND = 0.12;
const HEIGHT = 96;
const LEAST_WIDTH = 98;
/** Pixels of a character at the size of the labels; none is wider but the minus sign, and a point is narrower. */
const CHARACTER = 6.5;
/** Between a label and what stands beside it. */
const GAP = 6;

/** A number as an axis has it: the numbers beside the plot give all its digits. */
export function labelText(value: number): string {
  return numberText(Number(value.toPrecision(4)));
}

/** Room for every label: those of the values stand to the left, the first and the last input beneath their keys. */
export function plotFrame({ keys }: DriverMap): PlotFrame {
  const values = keys.map(([, y]) => y);
  const widest = Math.max(widthOf(Math.min(...values)), widthOf(Math.max(...values)));
  const [first, last] = [widthOf(keys[0]![0]) / 2, widthOf(keys.at(-1)![0]) / 2];
  const drawn = Math.max(LEAST_WIDTH, (first + last + GAP) * (1 + 2 * BEYOND));
  const inset = (drawn * BEYOND) / (1 + 2 * BEYOND);
  const left = Math.ceil(Math.max(22, widest + GAP, first - inset));
  const right = Math.ceil(Math.max(12, last - inset));
  return { width: Math.ceil(left + drawn + right), height: HEIGHT, left, right, top: 10, bottom: 18 };
}

function widthOf(value: number): number {
  return labelText(value).length * CHARACTER;
}
