import { expect, type Page } from '@playwright/test';

/** The page is no wider than the window. */
export async function expectNoSideways(page: Page, what: string): Promise<void> {
  const px = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(px, `${what}: scrolls sideways by this many px`).toBe(0);
}
