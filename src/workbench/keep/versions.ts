import { difference } from '../state/patch.ts';
import { type Database, withDatabase } from './database.ts';
import { type Content, isSameContent, type KeptVersion, type NewVersion, type VersionProof } from './version.ts';

/** What came of a change to the kept versions: nothing is changed where the name is taken, or the version is gone. */
export type Change = 'done' | 'taken' | 'gone';

/** The versions of one work, the newest first. Rejects where the browser keeps nothing, as all of these. */
export function versionsOf(work: string): Promise<KeptVersion[]> {
  return withDatabase(async (database) => {
    const all = (await database.getAllFromIndex('versions', 'work', work)) as KeptVersion[];
    return all.toSorted((a, b) => b.when - a.when || b.id - a.id);
  });
}

/** Keeps one more version; or one that was taken away once again, under its own number. */
export function addVersion(version: NewVersion | KeptVersion): Promise<Change> {
  return changed(version.work, (all, put) => {
    if (all.some(({ name }) => name === version.name)) return 'taken';
    put(version);
    return 'done';
  });
}

export function renameVersion({ work, id }: KeptVersion, name: string): Promise<Change> {
  return changed(work, (all, put) => {
    const own = all.find((each) => each.id === id);
    if (!own) return 'gone';
    if (all.some((each) => each !== own && each.name === name)) return 'taken';
    put({ ...own, name });
    return 'done';
  });
}

export function removeVersion({ id }: KeptVersion): Promise<Change> {
  return withDatabase<Change>(async (database) => {
    await database.delete('versions', id);
    return 'done';
  });
}

/** Writes what a proof said down with every version of the work that holds just what was proved. */
export function noteProof(work: string, content: Content, proof: VersionProof): Promise<Change> {
  return changed(work, (all, put) => {
    for (const each of all) {
      if (isSameContent(each, content) && difference(each.proof, proof).length > 0) put({ ...each, proof });
    }
    return 'done';
  });
}

type Put = (version: NewVersion | KeptVersion) => void;

/** One transaction, so that tabs cannot come between what is read and what is written. */
function changed(work: string, change: (all: readonly KeptVersion[], put: Put) => Change): Promise<Change> {
  return withDatabase(async (database: Database) => {
    const transaction = database.transaction('versions', 'readwrite');
    const all = (await transaction.store.index('work').getAll(work)) as KeptVersion[];
    const writes: Promise<unknown>[] = [];
    const said = change(all, (version) => writes.push(transaction.store.put(version)));
    await Promise.all([...writes, transaction.done]);
    return said;
  });
}
