import { type Attempt, keyOf } from '../../skills/attempt.ts';
import { joined } from '../../skills/merge.ts';
import { type Database, openDatabase } from './database.ts';

/** All attempts that the browser keeps. Rejects where it keeps nothing. */
export function keptAttempts(): Promise<Attempt[]> {
  return withDatabase((database) => database.getAll('attempts'));
}

/** Keeps attempts beside those that are there, all or none of them. Rejects where the browser keeps nothing. */
export function keepAttempts(attempts: readonly Attempt[]): Promise<void> {
  return withDatabase(async (database) => {
    const transaction = database.transaction('attempts', 'readwrite');
    for (const attempt of attempts) {
      const there = await transaction.store.get(keyOf(attempt));
      await transaction.store.put(there ? joined(there, attempt) : attempt);
    }
    await transaction.done;
  });
}

/** Opened for one piece of work: a connection that stays open keeps the page out of the browser's back and forward. */
async function withDatabase<T>(use: (database: Database) => Promise<T>): Promise<T> {
  const database = await openDatabase();
  try {
    return await use(database);
  } finally {
    database.close();
  }
}
