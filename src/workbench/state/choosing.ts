import type { ChangeEvent, FocusEvent, MouseEvent } from 'react';

/**
 * Handlers that choose a bone once something of its row has the focus by keyboard, or is clicked. Not when a pointer
 * is only pressed: choosing may move what is under it, and then the click would go elsewhere. A mark to tick is heard
 * when it has changed: what a click draws anew before that takes its tick back.
 */
export function choosing(choose: () => void) {
  return {
    onFocusCapture: ({ target }: FocusEvent) => {
      if (target.matches(':focus-visible')) choose();
    },
    onClickCapture: ({ target }: MouseEvent) => {
      if (!isMark(target)) choose();
    },
    onChange: ({ target }: ChangeEvent) => {
      if (isMark(target)) choose();
    },
  };
}

function isMark(target: EventTarget): boolean {
  return target instanceof HTMLInputElement && target.type === 'checkbox';
}
