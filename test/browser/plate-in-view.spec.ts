import { byClicks } from './support/hand.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, openExercise, plate, proofSheet } from './support/workbench.ts';

const LAST_BONE = '[data-bone="vane_right"]';

test('the plate stays in view while one builds beneath it and reads the proof', async ({ page }) => {
  await openExercise(page, 'let-go');
  await page.locator(LAST_BONE).scrollIntoViewIfNeeded();
  await expect(plate(page)).toBeInViewport({ ratio: 0.99 });
  await byClicks.press(button(page, 'Prove it'));
  await proofSheet(page).locator('.wb-requirement').last().scrollIntoViewIfNeeded();
  await expect(plate(page)).toBeInViewport({ ratio: 0.99 });
});

test('what gets the focus is not covered by the plate', async ({ page }) => {
  await openExercise(page, 'let-go');
  await button(page, 'Prove it').focus();
  let seen = 0;
  for (let i = 0; i < 30; i++) {
    await page.keyboard.press('Shift+Tab');
    const covered = await coveredPx(page);
    expect(covered.px, `${covered.name} is covered by this many px`).toBeLessThan(1);
    seen++;
  }
  expect(seen).toBe(30);
});

/** Proves the start of a repair, and has the pose shown that breaks it. */
async function showCounterpose(page: Page): Promise<void> {
  await openExercise(page, 'silent-since-the-copy');
  await byClicks.mark(page.getByRole('radio').first());
  await byClicks.press(button(page, 'Prove it'));
  await byClicks.press(page.getByRole('button', { name: 'Show this pose' }).first());
}

test.describe('on a telephone', () => {
  test.use({ width: 360 });

  test('the plate comes into view when a counterpose is shown, beside what is said of it', async ({ page }) => {
    await showCounterpose(page);
    await expect(plate(page)).toBeInViewport({ ratio: 0.99 });
    await expect(page.getByRole('button', { name: 'Show this pose' }).first()).toBeInViewport();
    expect((await coveredPx(page)).px).toBeLessThan(1);
  });

  test('of 256 px it is scrolled to', async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 256 });
    await showCounterpose(page);
    await expect(plate(page)).toBeInViewport({ ratio: 0.5 });
  });

  test('the plate stays in view while the rig is moved, and scrolls away like any figure while it is built', async ({
    page,
  }) => {
    await openExercise(page, 'let-go');
    await byClicks.press(button(page, 'Try'));
    await page.getByRole('slider').last().scrollIntoViewIfNeeded();
    await expect(plate(page)).toBeInViewport({ ratio: 0.99 });
    await byClicks.press(button(page, 'Build'));
    await page.locator(LAST_BONE).scrollIntoViewIfNeeded();
    await expect(plate(page)).not.toBeInViewport();
  });
});

/** How much of what has the focus lies under the plate. */
function coveredPx(page: Page): Promise<{ name: string; px: number }> {
  return page.evaluate(() => {
    const own = document.activeElement!;
    const frame = document.querySelector('.wb-frame')!;
    const name = own.getAttribute('aria-label') ?? own.textContent ?? '';
    if (frame.contains(own)) return { name, px: 0 };
    const [a, b] = [own.getBoundingClientRect(), frame.getBoundingClientRect()];
    return { name, px: Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) };
  });
}
