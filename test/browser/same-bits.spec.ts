import { resolve } from 'node:path';
import { expect, test } from '@playwright/test';
import { build, type Rolldown } from 'vite';
import { corpusHash } from '../solver/corpus/corpusHash.ts';

const CORPUS = resolve(import.meta.dirname, '../solver/corpus/corpusHash.ts');

/** Bundled and shortened as the pages are, since that must change no bit either. */
async function bundle(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, lib: { entry: CORPUS, formats: ['iife'], name: 'corpus' } },
  });
  const [{ output }] = built as Rolldown.RolldownOutput[];
  return output[0].code;
}

test('the browser works out the same bits as Node', async ({ page }) => {
  await page.addScriptTag({ content: await bundle() });
  const inBrowser = await page.evaluate(() => {
    const { corpus } = globalThis as unknown as { corpus: { corpusHash(): string } };
    return corpus.corpusHash();
  });
  expect(inBrowser).toMatch(/^[0-9a-f]{16}$/);
  expect(inBrowser).toBe(corpusHash());
});
