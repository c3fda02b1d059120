import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { scrollThrough } from './support/scroll.ts';
import { builtPages, DIST } from './support/site.ts';
import { expect, test } from './support/test.ts';

/** Bytes after gzip, a kB being 1,000 of them: what a page may ask of a slow connection. */
const HTML_BYTES_MAX = 30_000;
const CSS_BYTES_MAX = 20_000;
const SCRIPT_BYTES_MAX = 260_000;

for (const path of builtPages()) {
  test(`${path} keeps to its bytes`, async ({ page }) => {
    const loaded = { script: 0, stylesheet: 0 };
    const counted: Promise<void>[] = [];
    page.context().on('response', (response) => {
      const kind = kindOf(response.headers()['content-type'] ?? '');
      if (kind === undefined) return;
      const count = async () => {
        loaded[kind] += gzipSync(await response.body()).length;
      };
      counted.push(count());
    });
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    await scrollThrough(page);
    await Promise.all(counted);

    expect(gzipSync(readFileSync(join(DIST, path))).length, 'HTML').toBeLessThanOrEqual(HTML_BYTES_MAX);
    expect(loaded.stylesheet, 'style sheets').toBeLessThanOrEqual(CSS_BYTES_MAX);
    expect(loaded.script, 'scripts, those of the exercises included').toBeLessThanOrEqual(SCRIPT_BYTES_MAX);
  });
}

function kindOf(contentType: string): 'script' | 'stylesheet' | undefined {
  if (contentType.startsWith('text/javascript')) return 'script';
  return contentType.startsWith('text/css') ? 'stylesheet' : undefined;
}
