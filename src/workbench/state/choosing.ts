import type { FocusEvent } from 'react';

/**
 * Handlers that choose a bone once something of its row has the focus by keyboard, or is clicked. Not when a pointer
 * is only pressed: choosing may move what is under it, and then the click would go elsewhere.
 */
export function choosing(choose: () => void) {
  return {
    onFocusCapture: ({ target }: FocusEvent) => {
      if (target.matches(':focus-visible')) choose();
    },
    onClickCapture: choose,
  };
}
