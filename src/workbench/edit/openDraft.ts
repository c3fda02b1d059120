import type { Step } from '../state/history.ts';
import type { Draft, Edit } from './draft.ts';

const OPEN = 'open a file';

/** Taking a file's work is a step like any other, so that undo brings back what was there. */
export function openDraft(draft: Draft): Edit {
  return { says: OPEN, apply: () => draft };
}

/** Whether the step took a file's work: what is built on it was not all built here. */
export function isFromFile({ says }: Pick<Step, 'says'>): boolean {
  return says === OPEN;
}
