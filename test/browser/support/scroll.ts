import type { Page } from '@playwright/test';

/** Scrolls as a reader does, so that everything that loads when it comes near has loaded; ends at the top. */
export async function scrollThrough(page: Page): Promise<void> {
  const screens = await page.evaluate(() => Math.ceil(document.documentElement.scrollHeight / innerHeight));
  for (let screen = 0; screen < screens; screen++) {
    await page.evaluate((top) => scrollTo(0, top * innerHeight), screen);
    await page.waitForTimeout(50);
  }
  await page.waitForLoadState('networkidle');
  await page.evaluate(() => scrollTo(0, 0));
}
