import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { filesOf } from './support/loaded-files.ts';
import { builtPages, DIST } from './support/site.ts';

/** Bytes after gzip, a kB being 1,000 of them: what a page may ask of a slow connection. */
const HTML_BYTES_MAX = 30_000;
const CSS_BYTES_MAX = 20_000;
const SCRIPT_BYTES_MAX = 260_000;
/**
 * Setting, handing in and marking also need signatures, zips, tables, plots and a strict reader of exercises; no lesson
 * does. The mark book's plate and its workers, a third of its bytes, are fetched when they are asked for.
 */
const CLASS_SCRIPT_BYTES_MAX: Readonly<Record<string, number>> = {
  'assignment/index.html': 320_000,
  'assignment/open/index.html': 320_000,
  'markbook/index.html': 450_000,
};

const gzippedBytes = (file: string): number => gzipSync(readFileSync(join(DIST, file))).length;
const sum = (files: string[]): number => files.map(gzippedBytes).reduce((total, bytes) => total + bytes, 0);

for (const page of builtPages()) {
  test(`${page} keeps to its bytes`, () => {
    const files = filesOf(page);
    const css = sum(files.filter((file) => file.endsWith('.css')));
    const script = sum(files.filter((file) => file.endsWith('.js')));
    test.info().annotations.push({ type: 'gzipped bytes', description: `css ${css}, script ${script}` });
    expect(gzippedBytes(page), 'HTML').toBeLessThanOrEqual(HTML_BYTES_MAX);
    expect(css, 'style sheets').toBeLessThanOrEqual(CSS_BYTES_MAX);
    expect(script, 'scripts, those of the exercises and their workers included').toBeLessThanOrEqual(
      CLASS_SCRIPT_BYTES_MAX[page] ?? SCRIPT_BYTES_MAX,
    );
  });
}

test('a page that holds an exercise is counted with its workbench', () => {
  const exercise = builtPages().find((page) => /^exercises\/.+\/index\.html$/.test(page));
  expect(exercise && filesOf(exercise).some((file) => file.includes('open-workbench') && file.endsWith('.js'))).toBe(
    true,
  );
});
