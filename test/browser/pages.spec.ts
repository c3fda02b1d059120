import { expectAxeClean } from './support/axe.ts';
import { scrollThrough } from './support/scroll.ts';
import { builtPages, isInTurn } from './support/site.ts';
import { expect, type Page, test } from './support/test.ts';
import { THEMES, WIDTHS } from './support/themes.ts';

for (const path of builtPages()) {
  for (const [turn, theme] of THEMES.entries()) {
    if (!isInTurn(path, turn, THEMES.length)) continue;
    test.describe(`${path} by ${theme}`, () => {
      test.use({ theme });

      test('loads clean, fits a telephone and is open to everyone', async ({ page }) => {
        for (const width of WIDTHS) {
          await page.setViewportSize({ width, height: 800 });
          await page.goto(path);
          await page.waitForLoadState('networkidle');
          await scrollThrough(page);
          expect(await overflowPx(page), `${width} px wide: scrolls sideways by this many px`).toBe(0);
          await expectAxeClean(page, `${path}, ${width} px wide, by ${theme}`);
        }
      });
    });
  }
}

function overflowPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}
