import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Attempt, AttemptKey } from '../../skills/attempt.ts';
import type { Draft } from '../edit/draft.ts';
import type { Step } from '../state/history.ts';
import type { Kept, KeptWork } from './record.ts';
import { upgrade, VERSION } from './upgrade.ts';

export interface Shape extends DBSchema {
  works: { key: string; value: KeptWork };
  drafts: { key: string; value: Draft };
  steps: { key: [work: string, index: number]; value: Step };
  attempts: { key: AttemptKey; value: Attempt };
}
export type Database = IDBPDatabase<Shape>;

/** What changed since the last save: steps from `from` on are new, those before it stand. */
export interface Change {
  readonly work: KeptWork;
  /** Absent where the document is as it was. */
  readonly draft?: Draft;
  readonly steps: readonly Step[];
  readonly from: number;
}

export function openDatabase(): Promise<Database> {
  return openDB<Shape>('counterpose', VERSION, {
    upgrade: (database, from, _to, transaction) => upgrade(database, from, transaction),
    // A tab with a later version of the course waits until this one lets go.
    blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
  });
}

/** Whether opening failed because a later version of the course has kept something here. */
export function isOfLaterVersion(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'VersionError';
}

export async function load(database: Database, key: string): Promise<Kept | undefined> {
  const transaction = database.transaction(['works', 'drafts', 'steps']);
  const [work, draft, steps] = await Promise.all([
    transaction.objectStore('works').get(key),
    transaction.objectStore('drafts').get(key),
    transaction.objectStore('steps').getAll(stepsOf(key, 0)),
  ]);
  await transaction.done;
  return work && draft ? { work, draft, steps } : undefined;
}

/**
 * Saves in one transaction, on top of the revision before the work's own. Nothing is written, and the revision that
 * stands there is returned, where another tab has saved in between; `over` writes all the same.
 */
export async function save(database: Database, change: Change, over = false): Promise<'saved' | { revision: number }> {
  const { work, draft, steps, from } = change;
  const transaction = database.transaction(['works', 'drafts', 'steps'], 'readwrite');
  const stands = (await transaction.objectStore('works').get(work.key))?.revision ?? 0;
  if (!over && stands !== work.revision - 1) {
    await transaction.done;
    return { revision: stands };
  }
  try {
    const writes: Promise<unknown>[] = [transaction.objectStore('works').put(work)];
    if (draft) writes.push(transaction.objectStore('drafts').put(draft, work.key));
    writes.push(transaction.objectStore('steps').delete(stepsOf(work.key, from)));
    for (let i = from; i < steps.length; i++) {
      writes.push(transaction.objectStore('steps').put(steps[i]!, [work.key, i]));
    }
    await Promise.all([...writes, transaction.done]);
  } catch (error) {
    abandon(transaction);
    throw error;
  }
  return 'saved';
}

/** All or nothing: what was written before the failure must not stand. One that has failed by itself is over. */
function abandon(transaction: { abort: () => void }): void {
  try {
    transaction.abort();
  } catch {
    return;
  }
}

function stepsOf(key: string, from: number): IDBKeyRange {
  return IDBKeyRange.bound([key, from], [key, Number.MAX_SAFE_INTEGER]);
}
