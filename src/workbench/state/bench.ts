import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Desk } from '../desk/desk.ts';
import type { Edit } from '../edit/draft.ts';
import type { Setting } from '../setting.ts';
import type { Action, Session } from './session.ts';
import type { Store } from './store.ts';

/** What every part of one workbench is given; it stays the same while the session changes. */
export interface Bench {
  readonly exercise: Exercise;
  readonly desk: Desk;
  readonly store: Store;
  /** The seed of the variant that the page around the workbench tells of. */
  readonly told: number;
  /** Told of every proof, where somebody has set the exercise. */
  readonly proved: Setting['proved'] | undefined;
  /** Draws another variant of the exercise, for kinds that redraw. */
  readonly redraw: () => Promise<void>;
  readonly dispatch: (action: Action) => void;
  /** Makes an edit, told under the sentence `slot` where it is refused. */
  readonly edit: (edit: Edit, slot: string) => void;
  /** Moves the focus to a sentence, once it is there. */
  readonly goTo: (slot: string) => void;
  /** The id on the page of a sentence. */
  readonly idOf: (slot: string) => string;
}

export const BenchContext = createContext<Bench | null>(null);

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('Used outside a workbench.');
  return bench;
}

/** A piece of the session, which `select` must give as it stands there: what shows it is drawn anew when it changes. */
export function useSession<T>(select: (session: Session) => T): T {
  const { store } = useBench();
  const get = () => select(store.get());
  return useSyncExternalStore(store.subscribe, get, get);
}
