import { type RefObject, useLayoutEffect, useState } from 'react';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The width an element has on the page, and the height that suits a plate of that width. */
export function useSize(element: RefObject<HTMLElement | null>, first: Size): Size {
  const [size, setSize] = useState(first);
  useLayoutEffect(() => {
    const observed = element.current;
    if (!observed || typeof ResizeObserver === 'undefined') return;
    const measure = () => {
      const width = Math.round(observed.clientWidth);
      if (width > 0) setSize((old) => (old.width === width ? old : { width, height: heightFor(width) }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(observed);
    return () => observer.disconnect();
  }, [element]);
  return size;
}

/** Squarer on a narrow page, where height is what there is. */
export function heightFor(width: number): number {
  return Math.round(width < 480 ? width * 0.9 : Math.min(460, width * 0.64));
}
