import type { KeyboardEvent } from 'react';
import { useDrag } from './useDrag.ts';

interface Props {
  bone: string;
  /** Slides from where the bone was by so many pixels. */
  slide: (from: readonly [number, number, number], dx: number, dy: number) => void;
  values: readonly [number, number, number];
  /** Pixels that an arrow key slides. */
  step: number;
}

/** A disc that slides in the view's plane. */
export function Disc({ bone, slide, values, step }: Props) {
  const drag = useDrag(() => values, slide);
  function onKeyDown(event: KeyboardEvent) {
    const way = WAYS[event.key];
    if (!way || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    slide(values, way[0] * step, way[1] * step);
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button element
    <g
      className="wb-disc"
      role="button"
      tabIndex={0}
      aria-label={`Slide ${bone} in the view’s plane, with the arrow keys`}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <circle className="ring" r="16" />
      <circle className="face" r="10" />
    </g>
  );
}

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
