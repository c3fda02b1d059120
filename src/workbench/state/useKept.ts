import { useEffect, useState, useSyncExternalStore } from 'react';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import { answeredBy, redraws } from '../answer/kinds.ts';
import { createKeeper, type Keeper } from '../keep/keeper.ts';
import type { Keeping } from '../keep/keeping.ts';
import { workKey } from '../keep/record.ts';
import { newSession } from './session.ts';
import { createStore, type Store } from './store.ts';

export interface Kept {
  readonly store: Store;
  /** The key under which the work is kept. */
  readonly work: string;
  readonly seed: number;
  readonly keeping: Keeping;
  readonly keeper: Keeper | null;
}

const OPENING: Keeping = { is: 'opening' };
const NOTHING = () => () => {};

/**
 * The session of one exercise: brought back from the browser’s storage, and kept there with every change.
 * @param keptUnder put before the name under which it is kept
 */
export function useKept(exercise: Exercise, keptUnder = ''): Kept {
  const [store] = useState(() => createStore(newSession({ rig: exercise.start, parts: {} }, exercise.seed)));
  const [keeper, setKeeper] = useState<Keeper | null>(null);
  const key = keptUnder + workKey(exercise.id, redraws(exercise) ? 'drawn' : exercise.seed);
  const { edition } = exercise;
  const posed = answeredBy(exercise) === 'pose';
  useEffect(() => {
    const opened = createKeeper(store, { key, edition, posed });
    setKeeper(opened);
    return () => opened.close();
  }, [store, key, edition, posed]);
  const seedNow = () => store.get().seed;
  const seed = useSyncExternalStore(store.subscribe, seedNow, seedNow);
  const keeping = useSyncExternalStore(
    keeper?.subscribe ?? NOTHING,
    () => keeper?.get() ?? OPENING,
    () => OPENING,
  );
  return { store, work: key, seed, keeping, keeper };
}
