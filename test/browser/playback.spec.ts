import { answerFrom, exerciseOf } from './support/exercises.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, openExercise, openFile } from './support/workbench.ts';

async function openPlayback(page: Page): Promise<void> {
  const exercise = exerciseOf('one-vane');
  await openExercise(page, 'one-vane');
  await openFile(page, 'answer.json', JSON.stringify(answerFrom(exercise, exercise.references[0]!)));
  await page.getByRole('button', { name: 'Try', exact: true }).click();
  await page.getByText('Play', { exact: true }).click();
}

test('the proof’s probes are stepped through and played, and stop when the rig is posed by hand', async ({ page }) => {
  await openPlayback(page);
  await button(page, 'Fetch them').click();
  const probes = page.getByRole('region', { name: 'Probes' });
  await expect(probes).toContainText(/1 of \d\d/);
  await probes.getByRole('button', { name: 'One on' }).click();
  await expect(probes).toContainText(/2 of \d\d/);
  await page.getByLabel(/^Speed/).selectOption('4');
  await probes.getByRole('button', { name: 'Play' }).click();
  await expect(probes).toContainText(/[5-9] of \d\d/, { timeout: 15_000 });
  await button(page, 'Back to rest').first().click();
  await expect(probes.getByRole('button', { name: 'Play' })).toBeVisible();
});

test('a motion goes through the poses that were kept as keys', async ({ page }) => {
  await openPlayback(page);
  await button(page, 'Keep this pose as a key').click();
  const slider = page.getByRole('slider').first();
  await slider.focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
  await button(page, 'Keep this pose as a key').click();
  const motion = page.getByRole('region', { name: 'Motion' });
  await expect(motion).toContainText('1 of 2');
  await motion.getByRole('button', { name: 'Play' }).click();
  await expect(motion).toContainText('2 of 2', { timeout: 15_000 });
  await expect(motion.getByRole('button', { name: 'Play' })).toBeVisible();
});
