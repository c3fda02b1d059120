import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { contextsMade, graphicsHeld, loseContext, restoreContext, watchGraphics } from './support/graphics.ts';
import { mount, openMounting, unmount } from './support/mounting/page.ts';
import { coloursOf, paintedShare } from './support/picture.ts';
import { builtPages, DIST } from './support/site.ts';
import { expect, test } from './support/test.ts';
import { THEMES } from './support/themes.ts';
import { openExercise, plate } from './support/workbench.ts';

const MOUNTS = 50;
const BACK_MS_MAX = 1000;
const NOTHING = { contexts: 0, buffers: 0, vertexArrays: 0, programs: 0, workers: 0 };

test.beforeEach(({ context }) => watchGraphics(context));

test(`${MOUNTS} workbenches that come and go leave nothing behind`, async ({ page }) => {
  test.setTimeout(180_000);
  await openMounting(page);
  await mount(page, 'one-vane', 2);
  const held = await graphicsHeld(page);
  expect(held).toMatchObject({ contexts: 1, workers: 1 });
  expect(held.buffers).toBeGreaterThan(0);
  await unmount(page);
  expect(await graphicsHeld(page)).toEqual(NOTHING);
  for (let i = 0; i < MOUNTS; i++) {
    await mount(page, 'one-vane', 1);
    await unmount(page);
  }
  expect(await graphicsHeld(page)).toEqual(NOTHING);
  expect(await contextsMade(page)).toBe(MOUNTS + 1);
  await expect(page.locator('canvas')).toHaveCount(0);
});

test('all plates of a page share one context', async ({ page }) => {
  const counted = builtPages().map((path) => ({
    path,
    count: readFileSync(join(DIST, path), 'utf8').split('data-exercise=').length - 1,
  }));
  const { path, count } = counted.sort((a, b) => b.count - a.count)[0]!;
  expect(count).toBeGreaterThan(1);
  await page.goto(path);
  for (const place of await page.locator('[data-exercise]').all()) {
    await place.scrollIntoViewIfNeeded();
    await expect(place.locator('.wb-canvas').first()).toBeVisible({ timeout: 20_000 });
  }
  expect(await contextsMade(page)).toBe(1);
});

test('a context that was lost is back within a second, and the plate is drawn meanwhile', async ({ page }) => {
  await openExercise(page, 'one-vane');
  await expect(page.locator('.wb-canvas')).toBeVisible();
  await loseContext(page);
  await expect(page.locator('.wb-canvas')).toHaveCount(0);
  expect(await paintedShare(page, plate(page))).toBeGreaterThan(0.01);
  expect(await restoreContext(page)).toBeLessThan(BACK_MS_MAX);
  await expect(page.locator('.wb-canvas')).toBeVisible();
  expect(await paintedShare(page, plate(page))).toBeGreaterThan(0.01);
  expect(await contextsMade(page)).toBe(1);
});

for (const theme of THEMES) {
  test.describe(`by ${theme}`, () => {
    test.use({ theme });

    test('the plate lies on the paper of the page', async ({ page }) => {
      await openExercise(page, 'one-vane');
      await expect(page.locator('.wb-canvas')).toBeVisible();
      const colours = [...(await coloursOf(page, plate(page)))];
      const [[commonest, count]] = colours as [[string, number]];
      const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
      expect(`rgb(${commonest.replaceAll(',', ', ')})`).toBe(paper);
      expect(count / colours.reduce((sum, [, each]) => sum + each, 0)).toBeGreaterThan(0.5);
    });
  });
}
