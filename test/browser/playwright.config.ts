import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { defineConfig } from '@playwright/test';
import { BROWSER_FLAGS, findBrowser } from './support/find-browser.ts';
import { DIST } from './support/site.ts';

const root = resolve(import.meta.dirname, '../..');

if (!existsSync(join(DIST, 'index.html'))) stop('There is no built course to test: run "npm run build" first.');
const browser = await findBrowser().catch((error: Error) => stop(error.message));

export default defineConfig({
  testDir: import.meta.dirname,
  testMatch: '**/*.spec.ts',
  outputDir: resolve(root, 'test-results/browser'),
  reporter: [['list'], ['json', { outputFile: resolve(root, 'test-results/browser.json') }]],
  fullyParallel: true,
  workers: 2,
  retries: process.env.CI ? 1 : 0,
  forbidOnly: Boolean(process.env.CI),
  timeout: 120_000,
  use: {
    browserName: 'chromium',
    launchOptions: {
      executablePath: browser.executablePath,
      args: BROWSER_FLAGS,
      env: { ...(process.env as Record<string, string>), ...browser.env },
    },
    reducedMotion: 'reduce',
  },
});

function stop(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}
