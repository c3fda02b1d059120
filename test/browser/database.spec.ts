import { byClicks } from './support/hand.ts';
import { AIM, openSkills, row } from './support/skills.ts';
import { expect, test } from './support/test.ts';
import { button, openExercise } from './support/workbench.ts';

test('what version 1 of the database kept is still there, and its proofs are counted', async ({ page }) => {
  await page.goto('contents/');
  await page.evaluate(async () => {
    const request = indexedDB.open('counterpose', 1);
    await new Promise<void>((done) => {
      request.onupgradeneeded = () => {
        const works = request.result.createObjectStore('works', { keyPath: 'key' });
        const drafts = request.result.createObjectStore('drafts');
        request.result.createObjectStore('steps');
        const result = { outcome: 'graded', exercise: 'one-vane', seed: 0, passed: true };
        works.put({ key: 'one-vane/0', schema: 1, proofs: [{ when: 5, result }], hints: [] });
        drafts.put({ parts: {} }, 'one-vane/0');
      };
      request.onsuccess = () => done();
    });
    request.result.close();
  });
  await openSkills(page);
  await expect(row(page, AIM)).toContainText('under way: 1 of 3 in a row');
  const works = await page.evaluate(
    () =>
      new Promise((done) => {
        const request = indexedDB.open('counterpose');
        request.onsuccess = () => {
          const asked = request.result.transaction('works').objectStore('works').getAllKeys();
          asked.onsuccess = () => done([request.result.version, asked.result]);
        };
      }),
  );
  expect(works).toEqual([3, ['one-vane/0']]);
});

test('what a later version of the database holds is left alone, and it is told', async ({ page }) => {
  await page.goto('contents/');
  await page.evaluate(async () => {
    const request = indexedDB.open('counterpose', 99);
    await new Promise((done) => {
      request.onsuccess = done;
    });
    request.result.close();
  });
  await openSkills(page);
  await expect(page.getByRole('alert').first()).toContainText('made by a later version');
  await openExercise(page, 'one-vane');
  await expect(page.getByRole('alert')).toContainText('made by a later version');
  await byClicks.press(button(page, 'Prove it'));
  await expect(page.getByText('Proof done')).toBeAttached();
  const databases = await page.evaluate(() => indexedDB.databases());
  expect(databases).toEqual([{ name: 'counterpose', version: 99 }]);
});
