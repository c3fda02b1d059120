import { type RefObject, useEffect } from 'react';

/** What had the focus, and, from the innermost on, what it stood in: which of all that Tab reaches there it was. */
interface Place {
  readonly element: Element;
  readonly standsIn: readonly { readonly around: HTMLElement; readonly index: number }[];
}

const REACHED = ':is(button, select, input, summary, [tabindex="0"]):not(:disabled)';

/**
 * Where what had the focus is renamed, taken away or disabled, the focus goes to what now stands in its place, and is
 * not lost to the top of the page. Only for those who came by keyboard: a pointer needs no focus to go on.
 */
export function useFocusKept(within: RefObject<HTMLElement | null>, isOpen: boolean): void {
  useEffect(() => {
    const bench = within.current;
    if (!bench || !isOpen) return;
    let last: Place | null = null;

    const onFocusIn = ({ target }: FocusEvent) => {
      last = target instanceof Element && target.matches(':focus-visible') ? placeOf(target, bench) : null;
    };
    // Leaving a field may change its name, and with it the row in which the focus was to go on.
    const onFocusOut = ({ relatedTarget }: FocusEvent) => {
      if (last && relatedTarget instanceof Element && bench.contains(relatedTarget))
        last = placeOf(relatedTarget, bench);
    };
    const onChange = () => {
      if (!last) return;
      if (isThere(last.element)) last = placeOf(last.element, bench);
      else if (isLost(last.element)) bringBack(last);
    };

    bench.addEventListener('focusin', onFocusIn);
    bench.addEventListener('focusout', onFocusOut);
    const observer = new MutationObserver(onChange);
    observer.observe(bench, { subtree: true, childList: true, attributeFilter: ['disabled'] });
    return () => {
      observer.disconnect();
      bench.removeEventListener('focusin', onFocusIn);
      bench.removeEventListener('focusout', onFocusOut);
    };
  }, [within, isOpen]);
}

function placeOf(element: Element, bench: HTMLElement): Place {
  const all = reached(bench);
  const index = all.indexOf(element as HTMLElement);
  const standsIn: { around: HTMLElement; index: number }[] = [];
  for (let around = element.parentElement; around && bench.contains(around); around = around.parentElement) {
    const holder = around;
    standsIn.push({ around, index: index - all.findIndex((each) => holder.contains(each)) });
  }
  return { element, standsIn };
}

function bringBack({ standsIn }: Place): void {
  const left = standsIn.find(({ around }) => around.isConnected);
  if (!left) return;
  const elements = reached(left.around);
  elements[Math.min(left.index, elements.length - 1)]?.focus({ preventScroll: true });
}

/** All that Tab reaches, in its order. */
function reached(bench: HTMLElement): HTMLElement[] {
  return [...bench.querySelectorAll<HTMLElement>(REACHED)].filter((element) => element.checkVisibility());
}

function isThere(element: Element): boolean {
  return element.isConnected && !element.matches(':disabled');
}

/** What is disabled keeps the focus until the page is next painted. */
function isLost(had: Element): boolean {
  return document.activeElement === document.body || document.activeElement === had;
}
