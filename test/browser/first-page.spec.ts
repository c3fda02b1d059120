import { tabTo } from './support/keyboard.ts';
import { expect, test } from './support/test.ts';
import { button, expectAllMet, expectOpen, plate, proofSheet, verdict } from './support/workbench.ts';

/** A Page key moves a slider by a tenth of its range. */
const SWING = ['PageDown', 'PageDown', 'PageDown'];
const LOWER = ['PageDown', 'PageDown', 'PageDown'];
/** Window width to height: a small telephone less the bars of its browser, and a small laptop. */
const SCREENS = [
  [360, 640],
  [1280, 800],
] as const;

for (const [width, height] of SCREENS) {
  test(`a newcomer hangs the hook over the boat by keyboard at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await page.goto('.');
    const exercise = page.locator('#exercise-over-the-boat');
    await exercise.scrollIntoViewIfNeeded();
    await expectOpen(page);

    const task = (await exercise.locator('.task p').allTextContents()).join(' ');
    expect(task.match(/[.!?](\s|$)/g)?.length, 'sentences to read').toBe(3);
    const sliders = exercise.locator('input[type=range]');
    await expect(sliders).toHaveCount(2);
    const swing = sliders.and(page.getByLabel('turn y of crane'));
    const lower = sliders.and(page.getByLabel('move y of hook'));
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide, 'nothing has to be scrolled sideways').toBeLessThanOrEqual(width);
    const [picture, last] = [await plate(page).boundingBox(), await lower.boundingBox()];
    expect(last!.y + last!.height - picture!.y, 'picture and sliders on one screen').toBeLessThan(height);

    const before = await plate(page).screenshot();
    await tabTo(page, swing);
    for (const key of SWING) await page.keyboard.press(key);
    await expect(swing).toHaveValue('-36');
    expect(await plate(page).screenshot(), 'the crane is seen to swing').not.toEqual(before);

    await tabTo(page, button(page, 'Prove it'));
    await page.keyboard.press('Enter');
    await expect(verdict(page)).toContainText('1 of 2 requirements are met');
    await expect(proofSheet(page)).toContainText('the hook still hangs where it was');

    await tabTo(page, lower);
    for (const key of LOWER) await page.keyboard.press(key);
    await expect(lower).toHaveValue('-0.9');
    await tabTo(page, button(page, 'Prove it'));
    await page.keyboard.press('Enter');
    await expectAllMet(page);
  });
}

test('the first page loads nothing of the workbench until the reader comes near', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 200 });
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto('.', { waitUntil: 'networkidle' });
  expect(fetched.filter((url) => /over-the-boat\.json|Workbench|open-workbench\./.test(url))).toEqual([]);
  await page.locator('#exercise-over-the-boat').scrollIntoViewIfNeeded();
  await expectOpen(page);
  expect(fetched.some((url) => url.endsWith('over-the-boat.json'))).toBe(true);
});
