import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Attempt } from '../../skills/attempt.ts';
import type { Shape } from './database.ts';
import type { KeptWork } from './record.ts';

/** The version of the database; a change of its stores needs a step in `upgrade`. */
export const VERSION = 3;

type Upgrading = IDBPTransaction<Shape, StoreNames<Shape>[], 'versionchange'>;

/** Brings the stores from an earlier version (0 where there is none) to the present one, with all that is in them. */
export async function upgrade(database: IDBPDatabase<Shape>, from: number, transaction: Upgrading): Promise<void> {
  if (from < 1) {
    database.createObjectStore('works', { keyPath: 'key' });
    database.createObjectStore('drafts');
    database.createObjectStore('steps');
  }
  if (from < 2) {
    const attempts = database.createObjectStore('attempts', { keyPath: ['exercise', 'seed', 'when'] });
    const works = await transaction.objectStore('works').getAll();
    for (const attempt of works.flatMap(attemptsIn)) await attempts.put(attempt);
  }
  if (from < 3) {
    database.createObjectStore('versions', { keyPath: 'id', autoIncrement: true }).createIndex('work', 'work');
  }
}

/** Version 1 kept proofs with the work alone, and the skills they were of nowhere. */
export function attemptsIn({ proofs, hints }: Pick<KeptWork, 'proofs' | 'hints'>): Attempt[] {
  return proofs.map(({ when, result: { exercise, seed, passed } }) => {
    return { skills: [], exercise, seed, when, passed, aided: hints.length > 0 };
  });
}
