import { type PointerEvent, useRef } from 'react';
import type { Look } from './view.ts';

/** In the free view, dragging the paper turns the view. Tells a drag from a click. */
export function useTurning(look: Look, setLook: (look: Look) => void) {
  const from = useRef<{ x: number; y: number; look: Look; moved: boolean } | null>(null);
  return {
    down: (event: PointerEvent) => {
      if (event.button === 0) from.current = { x: event.clientX, y: event.clientY, look, moved: false };
    },
    move: (event: PointerEvent<HTMLDivElement>) => {
      const { current } = from;
      if (!current) return;
      const [dx, dy] = [event.clientX - current.x, event.clientY - current.y];
      if (!current.moved && Math.abs(dx) + Math.abs(dy) < 5) return;
      current.moved = true;
      if (look.view !== 'free') return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const rise = Math.min(90, Math.max(-90, Math.round(current.look.rise + dy * 0.4)));
      setLook({ ...look, round: wrapped(Math.round(current.look.round - dx * 0.5)), rise });
    },
    up: () => {
      const moved = from.current?.moved ?? true;
      from.current = null;
      return moved;
    },
  };
}

function wrapped(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}
