import { type RefObject, useEffect } from 'react';

/** Calls `left` whenever the workbench that an element stands in has left the window. */
export function useInWindow(element: RefObject<HTMLElement | null>, left: () => void): void {
  const latest = { current: left };
  useEffect(() => {
    const whole = element.current?.closest('.wb');
    if (!whole) return;
    const watch = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => !isIntersecting)) latest.current();
    });
    watch.observe(whole);
    return () => watch.disconnect();
  });
}
