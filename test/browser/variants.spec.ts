import { byClicks } from './support/hand.ts';
import { keptAttempts } from './support/skills.ts';
import { expect, test } from './support/test.ts';
import { button, expectOpen, openExercise } from './support/workbench.ts';

test('the page of a variant tells of that variant', async ({ page }) => {
  await page.goto('exercises/one-vane/?seed=3');
  await expectOpen(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('One vane, one gull');
  await expect(page.locator('.task')).toContainText('Make board_right point at the gull');
  await expect(page).toHaveTitle('One vane, one gull · Counterpose');
});

test('a prediction goes over to the drawing that is asked for, and stays with what was drawn after it', async ({
  page,
}) => {
  await openExercise(page, 'how-high-the-hook');
  await page.goto('exercises/how-high-the-hook/?seed=5');
  await expectOpen(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('How high the masthead');
  await expect(page.getByText('This drawing has numbers of its own')).toHaveCount(0);
  for (const field of await page.getByRole('region', { name: 'Your answer' }).getByRole('spinbutton').all()) {
    await field.fill('100');
    await field.blur();
  }
  await byClicks.press(button(page, 'Prove it'));
  await byClicks.press(button(page, 'Draw another'));
  await expect(page.getByText('This drawing has numbers of its own')).toBeVisible();
  await page.reload();
  await expectOpen(page);
  await expect(page.getByText('This drawing has numbers of its own')).toBeVisible();
  expect(await keptAttempts(page)).toMatchObject([{ exercise: 'how-high-the-hook', seed: 5, passed: false }]);
});
