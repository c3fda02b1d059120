import type { History } from '../state/history.ts';
import type { Draft, Edit } from './draft.ts';

const OPEN = 'open a file';
const OPEN_KEPT = `${OPEN} kept as `;

/** Taking a file's work is a step like any other, so that undo brings back what was there. */
export function openDraft(draft: Draft): Edit {
  return { says: OPEN, apply: () => draft };
}

/** Taking a version kept under a name, in the same way; one that came from a file is still said to. */
export function openVersion({ name, draft, fromFile }: { name: string; draft: Draft; fromFile: boolean }): Edit {
  return { says: `${fromFile ? OPEN_KEPT : 'open '}“${name}”`, apply: () => draft };
}

/** Whether a file's work was taken on the way to what stands: then it was not all built here. */
export function isBuiltOnFile({ steps, at }: Pick<History<unknown>, 'steps' | 'at'>): boolean {
  return steps.slice(0, at).some(({ says }) => says === OPEN || says.startsWith(OPEN_KEPT));
}
