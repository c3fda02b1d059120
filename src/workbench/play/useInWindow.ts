import { type RefObject, useEffect } from 'react';

/** Calls `left` whenever the workbench that an element stands in has left the window; `left` should stay the same. */
export function useInWindow(element: RefObject<HTMLElement | null>, left: () => void): void {
  useEffect(() => {
    const whole = element.current?.closest('.wb');
    if (!whole) return;
    const watch = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => !isIntersecting)) left();
    });
    watch.observe(whole);
    return () => watch.disconnect();
  }, [element, left]);
}
