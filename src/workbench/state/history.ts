import { difference, type Patch, patched } from './patch.ts';

/** One change that can be taken back, in the words of the edit. */
export interface Step {
  readonly says: string;
  readonly patches: readonly Patch[];
  /** Edits of one key that follow within MERGE_MS are one step. */
  readonly merge?: string;
  /** Milliseconds since 1970, of the last edit joined to it. */
  readonly when: number;
}

/** A document with all that led to it; `at` steps are done, those after it are undone. */
export interface History<T> {
  readonly document: T;
  readonly steps: readonly Step[];
  readonly at: number;
}

export const MERGE_MS = 1200;

export function begun<T>(document: T): History<T> {
  return { document, steps: [], at: 0 };
}

/** The history with one more change; undone steps are given up. No step where nothing differs. */
export function changed<T>(
  history: History<T>,
  document: T,
  step: { says: string; merge?: string; when: number },
): History<T> {
  const patches = difference(history.document, document);
  if (patches.length === 0) return history;
  const done = history.steps.slice(0, history.at);
  const last = done.at(-1);
  if (!last || !joins(last, step)) return { document, steps: [...done, { ...step, patches }], at: done.length + 1 };
  const before = patched(history.document, last.patches, true);
  const joined = { ...step, patches: difference(before, document) };
  return { document, steps: [...done.slice(0, -1), joined], at: done.length };
}

export function undone<T>(history: History<T>): History<T> {
  const step = history.steps[history.at - 1];
  if (!step) return history;
  return { ...history, document: patched(history.document, step.patches, true), at: history.at - 1 };
}

export function redone<T>(history: History<T>): History<T> {
  const step = history.steps[history.at];
  if (!step) return history;
  return { ...history, document: patched(history.document, step.patches), at: history.at + 1 };
}

/** What undo or redo would take back or do again. */
export function nextUndo<T>(history: History<T>): string | undefined {
  return history.steps[history.at - 1]?.says;
}

export function nextRedo<T>(history: History<T>): string | undefined {
  return history.steps[history.at]?.says;
}

function joins(last: Step, step: { merge?: string; when: number }): boolean {
  return step.merge !== undefined && step.merge === last.merge && step.when - last.when < MERGE_MS;
}
