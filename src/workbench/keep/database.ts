import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Attempt, AttemptKey } from '../../skills/attempt.ts';
import type { Draft } from '../edit/draft.ts';
import type { Step } from '../state/history.ts';
import type { Kept, KeptWork } from './record.ts';
import { upgrade, VERSION } from './upgrade.ts';
import type { KeptVersion, NewVersion } from './version.ts';

export interface Shape extends DBSchema {
  works: { key: string; value: KeptWork };
  drafts: { key: string; value: Draft };
  steps: { key: [work: string, index: number]; value: Step };
  attempts: { key: AttemptKey; value: Attempt };
  versions: { key: number; value: KeptVersion | NewVersion; indexes: { work: string } };
}
export type Database = IDBPDatabase<Shape>;

/** What changed since the last save: steps from `from` on are new, those before it stand. */
export interface Change {
  readonly work: KeptWork;
  /** Absent where the document is as it was. */
  readonly draft?: Draft;
  readonly steps: readonly Step[];
  readonly from: number;
  /** How many steps stood before; as many as there may be where that is not known. */
  readonly over: number;
  /** The revision that it was made on top of; any where it is to be written over whatever stands. */
  readonly on: number | 'any';
}

export function openDatabase(): Promise<Database> {
  return openDB<Shape>('counterpose', VERSION, {
    upgrade: (database, from, _to, transaction) => upgrade(database, from, transaction),
    // A tab with a later version of the course waits until this one lets go.
    blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
  });
}

/** Opened for one piece of work: a connection that stays open keeps the page out of the browser's back and forward. */
export async function withDatabase<T>(use: (database: Database) => Promise<T>): Promise<T> {
  const database = await openDatabase();
  try {
    return await use(database);
  } finally {
    database.close();
  }
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

/** Saves in one transaction. Nothing is written where another tab has saved its work in between. */
export async function save(database: Database, change: Change): Promise<'saved' | 'elsewhere'> {
  const { work, draft, steps, from, over, on } = change;
  const transaction = database.transaction(['works', 'drafts', 'steps'], 'readwrite');
  const stands = (await transaction.objectStore('works').get(work.key))?.revision ?? 0;
  if (on !== 'any' && stands !== on) {
    await transaction.done;
    return 'elsewhere';
  }
  try {
    const writes: Promise<unknown>[] = [transaction.objectStore('works').put(work)];
    if (draft) writes.push(transaction.objectStore('drafts').put(draft, work.key));
    if (over > from) writes.push(transaction.objectStore('steps').delete(stepsOf(work.key, from)));
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
