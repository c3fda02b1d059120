import { type Attempt, keyOf } from '../../skills/attempt.ts';
import { joined } from '../../skills/merge.ts';
import { withDatabase } from './database.ts';

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
