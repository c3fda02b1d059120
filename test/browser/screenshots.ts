/** Takes every built page in both widths and themes, whole, into screenshots/. */
import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { serve } from '../../scripts/serve.mjs';
import { BROWSER_FLAGS, findBrowser } from './support/find-browser.ts';
import { scrollThrough } from './support/scroll.ts';
import { builtPages, DIST } from './support/site.ts';
import { THEMES, type Theme, WIDTHS } from './support/themes.ts';

const FOLDER = resolve(import.meta.dirname, '../../screenshots');

async function takeAll(browser: Browser, address: string): Promise<void> {
  for (const theme of THEMES) {
    for (const width of WIDTHS) await takeEach(browser, address, theme, width);
  }
}

async function takeEach(browser: Browser, address: string, theme: Theme, width: number): Promise<void> {
  const colorScheme = theme === 'night' ? 'dark' : 'light';
  const page = await browser.newPage({ baseURL: address, colorScheme, viewport: { width, height: 800 } });
  for (const path of builtPages()) {
    await page.goto(path, { waitUntil: 'networkidle' });
    await scrollThrough(page);
    const name = path.replace(/(\/?index)?\.html$/, '').replaceAll('/', '-') || 'front';
    await page.screenshot({ path: resolve(FOLDER, `${name}-${width}-${theme}.png`), fullPage: true });
  }
  await page.close();
}

if (builtPages().length === 0) throw new Error('There is no built course to show: run "npm run build" first.');
mkdirSync(FOLDER, { recursive: true });
const { executablePath, env } = await findBrowser();
const browser = await chromium.launch({
  executablePath,
  args: BROWSER_FLAGS,
  env: { ...(process.env as Record<string, string>), ...env },
});
const site = await serve(DIST);
try {
  await takeAll(browser, site.address);
  console.log(`${builtPages().length} pages, ${WIDTHS.length} widths, ${THEMES.length} themes: ${FOLDER}`);
} finally {
  await browser.close();
  await site.close();
}
