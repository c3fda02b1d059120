import { type RefObject, useEffect } from 'react';

const REACHED = 'button, select, input, summary, [tabindex="0"]';

/**
 * Where what had the focus is renamed, taken away or disabled, the focus goes to what now stands in its place, and is
 * not lost to the top of the page. Only for those who came by keyboard: a pointer needs no focus to go on.
 */
export function useFocusKept(within: RefObject<HTMLElement | null>, isOpen: boolean): void {
  useEffect(() => {
    const bench = within.current;
    if (!bench || !isOpen) return;
    let last: { element: Element; place: number } | null = null;

    function remember(element: EventTarget | null) {
      if (!(element instanceof Element) || !bench!.contains(element)) return;
      last = element.matches(':focus-visible') || last ? { element, place: reached(bench!).indexOf(element) } : null;
    }
    function onFocusIn({ target }: FocusEvent) {
      last = null;
      if (target instanceof Element && target.matches(':focus-visible')) remember(target);
    }
    // Leaving a field may change its name, and with it the row in which the focus was to go on.
    const onFocusOut = ({ relatedTarget }: FocusEvent) => remember(relatedTarget);
    function bringBack() {
      if (!last || document.activeElement !== document.body || isThere(last.element)) return;
      const places = reached(bench!);
      const place = places[Math.min(last.place, places.length - 1)];
      place?.focus({ preventScroll: true });
    }

    bench.addEventListener('focusin', onFocusIn);
    bench.addEventListener('focusout', onFocusOut);
    const observer = new MutationObserver(bringBack);
    observer.observe(bench, { subtree: true, childList: true, attributeFilter: ['disabled'] });
    return () => {
      observer.disconnect();
      bench.removeEventListener('focusin', onFocusIn);
      bench.removeEventListener('focusout', onFocusOut);
    };
  }, [within, isOpen]);
}

/** All that Tab reaches, in its order. */
function reached(bench: HTMLElement): HTMLElement[] {
  return [...bench.querySelectorAll<HTMLElement>(REACHED)].filter((element) => element.checkVisibility());
}

function isThere(element: Element): boolean {
  return element.isConnected && !element.matches(':disabled');
}
