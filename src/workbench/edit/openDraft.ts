import type { Draft, Edit } from './draft.ts';

/** Taking a file's work is a step like any other, so that undo brings back what was there. */
export function openDraft(draft: Draft): Edit {
  return { says: 'open a file', apply: () => draft };
}
