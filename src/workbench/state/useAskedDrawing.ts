import { useEffect } from 'react';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Action } from './session.ts';
import type { Store } from './store.ts';

/** The action that goes over to another drawing. */
export function drawn({ start, seed }: Exercise): Action {
  return { do: 'redraw', draft: { rig: start, parts: {} }, seed };
}

/**
 * Goes over to the drawing the page asks for, once what was kept is back: a kind that redraws may have been left at
 * another one. A page that asks for none (seed 0) goes on where it was left, and so does one whose drawing is answered.
 */
export function useAskedDrawing(asked: Exercise, store: Store, isBack: boolean): void {
  useEffect(() => {
    if (!isBack || asked.seed === 0) return;
    const { seed, proofs } = store.get();
    const isAnswered = proofs.some(({ result }) => result.seed === asked.seed);
    if (seed !== asked.seed && !isAnswered) store.dispatch(drawn(asked));
  }, [asked, store, isBack]);
}
