import { type RefObject, useEffect } from 'react';

/** Scrolls to the picture in a figure when a pose is shown in it that cannot be seen from where the page stands. */
export function useInSight(figure: RefObject<HTMLElement | null>, shown: string | null): void {
  useEffect(() => {
    const frame = shown === null ? null : figure.current?.querySelector('.wb-frame');
    if (!frame) return;
    const { top, bottom } = frame.getBoundingClientRect();
    if (bottom <= 0 || top >= innerHeight) frame.scrollIntoView({ block: 'nearest' });
  }, [figure, shown]);
}
