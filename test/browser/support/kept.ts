import type { Page } from '@playwright/test';
import type { Rig } from '../../../src/solver/document/rig.ts';
import type { Kept } from '../../../src/workbench/keep/record.ts';

/** What the browser keeps of an exercise, read past the page; undefined where it keeps nothing. */
export function keptWork(page: Page, exercise: string): Promise<Kept | undefined> {
  return page.evaluate(async (id) => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const database = await asked(indexedDB.open('counterpose'));
    const stores = database.transaction(['works', 'drafts', 'steps']);
    const variants = IDBKeyRange.bound(`${id}/`, `${id}/\uffff`);
    const [work] = await asked(stores.objectStore('works').getAll(variants));
    const key = work?.key ?? '';
    const [draft, steps] = await Promise.all([
      asked(stores.objectStore('drafts').get(key)),
      asked(stores.objectStore('steps').getAll(IDBKeyRange.bound([key, 0], [key, Number.MAX_SAFE_INTEGER]))),
    ]);
    database.close();
    return work && { work, draft, steps };
  }, exercise);
}

export async function keptRig(page: Page, exercise: string): Promise<Rig | undefined> {
  return (await keptWork(page, exercise))?.draft.rig;
}
