import type { Refusal } from '../../solver/document/refusal.ts';
import type { Pose } from '../../solver/document/rig.ts';
import type { Draft, Edit } from '../edit/draft.ts';
import type { ProofRecord } from '../proof/record.ts';
import { begun, changed, type History, nextRedo, nextUndo, redone, undone } from './history.ts';
import { followingRename } from './renamed.ts';
import { tried } from './tried.ts';

export type View = 'build' | 'try';

/** A hint the learner has opened, with the guess made before it. */
export interface HintTaken {
  readonly hint: number;
  readonly guess: string;
}

/** All that a workbench shows of one exercise and keeps from one visit to the next. */
export interface Session {
  /** Which variant of the exercise: kinds that redraw go from seed to seed. */
  readonly seed: number;
  readonly history: History<Draft>;
  readonly view: View;
  /** How the controls stand in Try. */
  readonly pose: Pose;
  /** The bone that is outlined and has handles. */
  readonly chosen: string | null;
  readonly proofs: readonly ProofRecord[];
  readonly hints: readonly HintTaken[];
  /** For a repair: the wrong turn the learner holds for the fault. */
  readonly guess: string | null;
  /** The requirement whose counterpose stands on the plate. */
  readonly shown: string | null;
  /** An edit that could not be made: `slot` is the sentence it was made in. */
  readonly refused: { readonly slot: string; readonly refusal: Refusal } | null;
  /** For the live region: what has just happened. */
  readonly said: string;
}

export type Action =
  | { do: 'edit'; edit: Edit; slot: string; when: number }
  | { do: 'undo' }
  | { do: 'redo' }
  | { do: 'view'; view: View }
  | { do: 'pose'; pose: Pose }
  | { do: 'rest' }
  | { do: 'choose'; bone: string | null }
  | { do: 'prove'; proof: ProofRecord }
  | { do: 'show'; requirement: string; pose: Pose }
  | { do: 'hint'; taken: HintTaken }
  | { do: 'guess'; guess: string }
  | { do: 'say'; said: string }
  | { do: 'redraw'; draft: Draft; seed: number }
  | { do: 'restore'; session: Session };

export function draftOf(session: Session): Draft {
  return session.history.document;
}

export function newSession(draft: Draft, seed = 0): Session {
  return {
    seed,
    history: begun(draft),
    view: 'build',
    pose: {},
    chosen: null,
    proofs: [],
    hints: [],
    guess: null,
    shown: null,
    refused: null,
    said: '',
  };
}

export function reduce(session: Session, action: Action): Session {
  switch (action.do) {
    case 'edit':
      return edited(session, action.edit, action.slot, action.when);
    case 'undo':
      return stepped(session, undone(session.history), 'Undone', nextUndo(session.history));
    case 'redo':
      return stepped(session, redone(session.history), 'Done again', nextRedo(session.history));
    case 'view':
      return { ...session, view: action.view, refused: null };
    case 'pose':
      return { ...session, pose: action.pose, shown: null };
    case 'rest':
      return { ...session, pose: {}, shown: null, said: 'Everything is back at rest.' };
    case 'choose':
      return { ...session, chosen: action.bone };
    case 'prove':
      return { ...session, proofs: [...session.proofs, action.proof], shown: null };
    case 'show':
      return { ...session, view: 'try', pose: action.pose, shown: action.requirement };
    case 'hint':
      return { ...session, hints: [...session.hints, action.taken] };
    case 'guess':
      return { ...session, guess: action.guess };
    case 'say':
      return { ...session, said: action.said };
    case 'redraw':
      return { ...newSession(action.draft, action.seed), proofs: session.proofs, said: 'Another one is drawn.' };
    case 'restore':
      return action.session;
  }
}

function edited(session: Session, edit: Edit, slot: string, when: number): Session {
  const made = tried(session.history.document, edit);
  if (!made.ok) return { ...session, refused: { slot, refusal: made.refusal } };
  const { says, merge } = edit;
  const step = merge === undefined ? { says, when } : { says, merge, when };
  const history = changed(session.history, made.value, step);
  const following = followingRename(session, history.document);
  return { ...session, ...following, history, refused: null, said: merge ? '' : `Done: ${says}.` };
}

function stepped(session: Session, history: History<Draft>, verb: string, says: string | undefined): Session {
  if (says === undefined) return session;
  const following = followingRename(session, history.document);
  return { ...session, ...following, history, refused: null, shown: null, said: `${verb}: ${says}.` };
}
