import { answerFrom, exerciseOf } from './support/exercises.ts';
import { expect, test } from './support/test.ts';
import { button, expectAllMet, openExercise, openFile } from './support/workbench.ts';

test('a lesson that was read to its foot is marked in the contents, and the mark can be taken back', async ({
  page,
}) => {
  const markIn = () => page.locator('[data-read-mark="3.1"]');
  await page.goto('contents/index.html');
  await expect(markIn()).toHaveText('');
  await page.goto('lessons/3.1-the-shortest-turn/index.html');
  await expect(page.getByText('Not marked as read.')).toBeAttached();
  await page.locator('#read-foot').scrollIntoViewIfNeeded();
  await expect(page.getByText('Marked as read in the contents.')).toBeVisible();
  await page.goto('contents/index.html');
  await expect(markIn()).toHaveText('read');
  await page.goto('lessons/3.1-the-shortest-turn/index.html');
  await button(page, 'Take the mark back').click();
  await page.goto('contents/index.html');
  await expect(markIn()).toHaveText('');
});

test('a proof sheet is printed whole: variant, time, each requirement with its numbers, and what such a mark is worth', async ({
  page,
}) => {
  const exercise = exerciseOf('one-vane');
  await openExercise(page, 'one-vane');
  await openFile(page, 'answer.json', JSON.stringify(answerFrom(exercise, exercise.references[0]!)));
  await button(page, 'Prove it').click();
  await expectAllMet(page);
  const printed = page.locator('.wb-printed');
  await expect(printed).toBeHidden();
  await page.emulateMedia({ media: 'print' });
  await expect(printed).toBeVisible();
  await expect(printed).toContainText(/variant 0, proved .+ provisional/);
  await expect(button(page, 'Prove it')).toBeHidden();
  for (const line of await page.locator('.wb-requirement').all()) await expect(line).toBeVisible();
  const cut = await page
    .locator('.wb-proof *')
    .evaluateAll(
      (all) =>
        all.filter((one) => one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).overflowX !== 'visible')
          .length,
    );
  expect(cut).toBe(0);
});
