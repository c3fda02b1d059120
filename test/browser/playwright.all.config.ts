/** The long run, `npm run browser:all`: every exercise, in each way of drawing. */
import { resolve } from 'node:path';
import { defineConfig } from '@playwright/test';
import short from './playwright.config.ts';

export default defineConfig(short, {
  testMatch: '**/*.all.ts',
  outputDir: resolve(import.meta.dirname, '../../test-results/browser-all'),
  reporter: [['list']],
});
