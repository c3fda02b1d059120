import { expectAxeClean } from './support/axe.ts';
import { scrollThrough } from './support/scroll.ts';
import { builtPages, isInTurn } from './support/site.ts';
import { expect, type Page, test } from './support/test.ts';
import { COLOR_SCHEMES, THEMES, WIDTHS } from './support/themes.ts';

const [NARROW, WIDE] = WIDTHS;

for (const path of builtPages()) {
  const themes = THEMES.filter((_, turn) => isInTurn(path, turn, THEMES.length));
  test.describe(path, () => {
    test.use({ theme: themes[0], width: NARROW });

    test(`loads clean, fits a telephone and is open to everyone by ${themes.join(' and ')}`, async ({ page }) => {
      await page.goto(path);
      await page.waitForLoadState('networkidle');
      await scrollThrough(page);
      // Made wide, or night, it stays the page that was loaded: nearly all other tests load theirs wide.
      for (const width of [NARROW, WIDE]) {
        await page.setViewportSize({ width, height: 800 });
        expect(await overflowPx(page), `${width} px wide: scrolls sideways by this many px`).toBe(0);
        for (const theme of themes) {
          await page.emulateMedia({ colorScheme: COLOR_SCHEMES[theme] });
          await expectAxeClean(page, `${path}, ${width} px wide, by ${theme}`);
        }
      }
    });
  });
}

function overflowPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}
