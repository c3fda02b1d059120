import { withTeaching } from '../keep/teaching-database.ts';
import { type Handing, newHanding } from './handing.ts';
import type { KeptAssignment } from './kept-assignment.ts';

/*
 * Every function here rejects where the browser keeps nothing.
 */

export async function keptHanding(assignment: string, learner: string): Promise<Handing> {
  const kept = await withTeaching((database) => database.get('handings', [assignment, learner]));
  return kept ?? newHanding(assignment, learner);
}

/** Changes what is kept, on top of what another tab may have kept meanwhile. */
export function changeHanding(
  assignment: string,
  learner: string,
  change: (handing: Handing) => Handing,
): Promise<Handing> {
  return withTeaching(async (database) => {
    const transaction = database.transaction('handings', 'readwrite');
    const key: [string, string] = [assignment, learner];
    const next = change((await transaction.store.get(key)) ?? newHanding(assignment, learner));
    await Promise.all([transaction.store.put(next, key), transaction.done]);
    return next;
  });
}

/** Keeps an assignment that was opened; gives what was kept under its id before. */
export function keepAssignment(kept: KeptAssignment): Promise<KeptAssignment | undefined> {
  return withTeaching(async (database) => {
    const before = await database.get('assignments', kept.id);
    await database.put('assignments', kept);
    return before;
  });
}

export const keptAssignments = (): Promise<KeptAssignment[]> =>
  withTeaching((database) => database.getAll('assignments'));

export const keptCode = (): Promise<string | undefined> => withTeaching((database) => database.get('codes', 'own'));

export async function keepCode(code: string): Promise<void> {
  await withTeaching((database) => database.put('codes', code, 'own'));
}
