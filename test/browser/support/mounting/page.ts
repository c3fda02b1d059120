import { resolve } from 'node:path';
import type { Page } from '@playwright/test';
import { build, type Rolldown } from 'vite';
import { leanThree } from '../../../../src/workbench/plate/three/lean.ts';

const ENTRY = resolve(import.meta.dirname, 'mount.ts');
const PAGE = '<!doctype html><html lang="en"><title>Mounting</title><body></body></html>';
const BEGIN = 'globalThis.mounting = await import("./mount.js");';

/** Opens an empty page beside the course's own, in which workbenches come and go. */
export async function openMounting(page: Page): Promise<void> {
  const files = await bundle();
  await page.route('**/mounting/**', (route) => {
    const [, name = ''] = new URL(route.request().url()).pathname.split('/mounting/');
    if (name === '') return route.fulfill({ contentType: 'text/html', body: PAGE });
    return route.fulfill({ contentType: 'text/javascript', body: files.get(name)! });
  });
  await page.goto('mounting/');
  await page.addScriptTag({ type: 'module', content: BEGIN });
  await page.waitForFunction(() => 'mounting' in globalThis);
}

/** Puts workbenches of an exercise into the page, and waits until each has been drawn by WebGL. */
export async function mount(page: Page, exercise: string, count: number): Promise<void> {
  await page.evaluate(([id, n]) => (globalThis as unknown as Mounting).mounting.mount(id, n), [
    exercise,
    count,
  ] as const);
  await page.waitForFunction((n) => document.querySelectorAll('canvas').length === n, count);
}

export function unmount(page: Page): Promise<void> {
  return page.evaluate(() => (globalThis as unknown as Mounting).mounting.unmount());
}

interface Mounting {
  readonly mounting: typeof import('./mount.ts');
}

/** The workbench bundled as the course bundles it, in pieces that load when they are needed: file name to script. */
async function bundle(): Promise<ReadonlyMap<string, string>> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    base: './',
    plugins: [leanThree()],
    define: { 'process.env.NODE_ENV': '"production"' },
    build: { write: false, lib: { entry: ENTRY, formats: ['es'], fileName: 'mount' } },
    worker: { format: 'es' },
  });
  const [{ output }] = built as [Rolldown.RolldownOutput];
  return new Map(output.map((file) => [file.fileName, file.type === 'chunk' ? file.code : String(file.source)]));
}
