import { type PointerEvent, useRef } from 'react';

interface Drag<T> {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  /** What was held at the start. */
  readonly held: T;
}

/**
 * Dragging by mouse, pen or finger: `start` says what is held, `move` is told that and how many pixels the pointer has
 * gone since.
 */
export function useDrag<T>(start: () => T, move: (held: T, dx: number, dy: number) => void) {
  const drag = useRef<Drag<T> | null>(null);
  return {
    onPointerDown: (event: PointerEvent<SVGElement>) => {
      if (event.button !== 0) return;
      event.stopPropagation();
      event.currentTarget.setPointerCapture(event.pointerId);
      drag.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY, held: start() };
    },
    onPointerMove: (event: PointerEvent<SVGElement>) => {
      const { current } = drag;
      if (current?.pointer !== event.pointerId) return;
      move(current.held, event.clientX - current.x, event.clientY - current.y);
    },
    onPointerUp: () => {
      drag.current = null;
    },
    onPointerCancel: () => {
      drag.current = null;
    },
  };
}
