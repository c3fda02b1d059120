import type { Reading } from '../../solver/document/refusal.ts';
import { readRig } from '../../solver/index.ts';
import type { Draft, Edit } from '../edit/draft.ts';

/** The draft after an edit, or why its rig could not be read: a draft that cannot be read is never kept. */
export function tried(draft: Draft, edit: Edit): Reading<Draft> {
  const refusal = edit.refuses?.(draft);
  if (refusal) return { ok: false, refusal };
  const next = edit.apply(draft);
  const read = readRig(next.rig);
  return read.ok ? { ok: true, value: next } : read;
}
