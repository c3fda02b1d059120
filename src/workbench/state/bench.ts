import { createContext, useContext } from 'react';
import type { Exercise } from '../../grader/exercise/definition.ts';
import type { Flag } from '../../solver/index.ts';
import type { Desk } from '../desk/desk.ts';
import type { Edit } from '../edit/draft.ts';
import type { Action, Session } from './session.ts';

/** What every part of one workbench is given. */
export interface Bench {
  readonly exercise: Exercise;
  readonly desk: Desk;
  readonly session: Session;
  /** The links ("bone.link") and drivers of the rig's cycle; none where it can be evaluated. */
  readonly cycle: readonly string[];
  /** What the solver could not do in the pose on the plate. */
  readonly flags: readonly Flag[];
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
