import type { Page } from '@playwright/test';
import type { Kept } from '../../../src/workbench/keep/record.ts';

/** What the browser keeps of an exercise, read past the page; undefined where it keeps nothing. */
export function keptWork(page: Page, exercise: string, seed = 0): Promise<Kept | undefined> {
  return page.evaluate(async (key) => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const database = await asked(indexedDB.open('counterpose'));
    const stores = database.transaction(['works', 'drafts', 'steps']);
    const [work, draft, steps] = await Promise.all([
      asked(stores.objectStore('works').get(key)),
      asked(stores.objectStore('drafts').get(key)),
      asked(stores.objectStore('steps').getAll(IDBKeyRange.bound([key, 0], [key, Number.MAX_SAFE_INTEGER]))),
    ]);
    database.close();
    return work && { work, draft, steps };
  }, `${exercise}/${seed}`);
}
