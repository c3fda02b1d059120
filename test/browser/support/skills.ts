import type { Attempt } from '../../../src/skills/attempt.ts';
import { expect, type Page } from './test.ts';

/** What the first skill of lesson 3.1 is called on the page. */
export const AIM = 'Aim a bone at a thing';

export const row = (page: Page, skill: string) => page.getByRole('row').filter({ hasText: skill });

export async function openSkills(page: Page): Promise<void> {
  await page.goto('skills/');
  await expect(page.getByRole('heading', { name: 'Due for review' })).toBeVisible();
}

/** The attempts that the browser keeps, read past the page. */
export function keptAttempts(page: Page): Promise<Attempt[]> {
  return page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const database = await asked(indexedDB.open('counterpose'));
    const all = await asked(database.transaction('attempts').objectStore('attempts').getAll());
    database.close();
    return all;
  });
}

/** Three passes of the first skill of lesson 3.1, so many days ago. */
export function mastered(daysAgo: number): Attempt[] {
  const when = Date.now() - daysAgo * 86_400_000;
  return [0, 1, 2].map((seed) => {
    return { skills: ['shortest-turn'], exercise: 'one-vane', seed, when: when + seed, passed: true, aided: false };
  });
}

export const fileOf = (attempts: Attempt[]) => JSON.stringify({ format: 'counterpose/attempts', version: 1, attempts });

/** Layout Instability API, W3C: the sum of all shifts so far. */
export function shiftIn(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((done) => {
        const observer = new PerformanceObserver((list) => {
          done(list.getEntries().reduce((sum, entry) => sum + (entry as unknown as { value: number }).value, 0));
        });
        observer.observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => done(0), 500);
      }),
  );
}
