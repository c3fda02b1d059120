import type { Label } from './drawing.ts';
import { project, type View } from './view.ts';

export interface PlacedLabel {
  readonly label: Label;
  /** Pixels from the top left: where the text begins, on its base line. */
  readonly x: number;
  readonly y: number;
}
interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Pixel = readonly [x: number, y: number];

const HEIGHT = 15;
const GAP = 9;
/** Half the width that a handle takes. */
const ROOM = 13;

/**
 * Puts labels beside their points so that none overlap; those of lower rank that find no room are left out.
 * @param handles centres of what stands on the plate above the labels
 */
export function placeLabels(
  labels: readonly Label[],
  view: View,
  widthOf: (text: string) => number,
  handles: readonly Pixel[] = [],
): PlacedLabel[] {
  const taken: Box[] = handles.map(([x, y]) => ({ left: x - ROOM, top: y - ROOM, right: x + ROOM, bottom: y + ROOM }));
  const placed: PlacedLabel[] = [];
  for (const label of labels.toSorted((a, b) => b.rank - a.rank)) {
    const [x, y] = project(view, label.at);
    const width = widthOf(label.text);
    const box = candidates(x, y, width).find((each) => fits(each, view) && taken.every((other) => apart(each, other)));
    if (!box) continue;
    taken.push(box);
    placed.push({ label, x: box.left, y: box.bottom - 4 });
  }
  return placed;
}

/** Right of the point, left, above, below, and then slantwise. */
function candidates(x: number, y: number, width: number): Box[] {
  const half = HEIGHT / 2;
  const at = (left: number, top: number): Box => ({ left, top, right: left + width, bottom: top + HEIGHT });
  return [
    at(x + GAP, y - half),
    at(x - GAP - width, y - half),
    at(x - width / 2, y - GAP - HEIGHT),
    at(x - width / 2, y + GAP),
    at(x + GAP, y - GAP - HEIGHT),
    at(x + GAP, y + GAP),
    at(x - GAP - width, y - GAP - HEIGHT),
    at(x - GAP - width, y + GAP),
    at(x + 3 * GAP, y - half),
    at(x - 3 * GAP - width, y - half),
  ];
}

function fits(box: Box, view: View): boolean {
  return box.left >= 2 && box.top >= 2 && box.right <= view.width - 2 && box.bottom <= view.height - 2;
}

function apart(a: Box, b: Box): boolean {
  return a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
}
