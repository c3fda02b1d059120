import { expectVisibleFocus, tabTo } from './support/keyboard.ts';
import { expect, test } from './support/test.ts';

test('the first Tab offers to skip to the text', async ({ page }) => {
  await page.goto('.');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'Skip to the text' });
  await expectVisibleFocus(skip);
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main')).toBeFocused();
});

test('day and night are chosen by keyboard, and kept', async ({ page }) => {
  await page.goto('.');
  const ink = () => page.evaluate(() => getComputedStyle(document.body).color);
  const day = await ink();
  await tabTo(page, page.getByRole('button', { name: 'Use the night colours' }));
  await page.keyboard.press('Enter');
  const night = await ink();
  expect(night).not.toBe(day);
  await page.reload();
  expect(await ink()).toBe(night);
  await expect(page.getByRole('button', { name: 'Use the day colours' })).toBeVisible();
});

test.describe('by night', () => {
  test.use({ theme: 'night' });

  test('a page follows the system where nothing is chosen', async ({ page }) => {
    await page.goto('.');
    await expect(page.getByRole('button', { name: 'Use the day colours' })).toBeVisible();
  });
});
