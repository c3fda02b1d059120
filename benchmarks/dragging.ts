/**
 * What a frame costs the page's main thread while the holder of the gaze rig of lesson 6.1 is dragged, on the built
 * course: "npm run build", then "node benchmarks/dragging.ts [STEPS]". Measured twice: as it is, with the graphics done
 * by software, and with WebGL's drawing and the copying of its picture left out; the difference is the software's.
 */
import { type Browser, chromium, type Locator, type Page } from '@playwright/test';
import { serve } from '../scripts/serve.mjs';
import { answerFrom, exerciseOf } from '../test/browser/support/exercises.ts';
import { BROWSER_FLAGS, findBrowser } from '../test/browser/support/find-browser.ts';
import { DIST } from '../test/browser/support/site.ts';
import { expectOpen, openFile } from '../test/browser/support/workbench.ts';
import { FRAME_PARTS, type Frame, framesOf } from './frames.ts';

const STEPS = Number(process.argv[2] ?? 240);
const CATEGORIES = ['devtools.timeline', 'disabled-by-default-devtools.timeline', '__metadata'];
const EXERCISE = exerciseOf('gaze-rig');
const HOLDER = EXERCISE.parts.find(({ id }) => id === 'holder')!.name;

async function measured(browser: Browser, address: string, draws: boolean): Promise<Frame[]> {
  const page = await browser.newPage({ baseURL: address, viewport: { width: 1280, height: 900 } });
  if (!draws) await page.addInitScript(leaveDrawingOut);
  await page.goto('exercises/gaze-rig/');
  await expectOpen(page);
  await openFile(page, 'answer.json', JSON.stringify(answerFrom(EXERCISE, EXERCISE.references[0]!)));
  await page.getByRole('button', { name: 'Try', exact: true }).click();
  await page.getByLabel('chosen bone').selectOption({ label: HOLDER });
  await page.locator('.wb-canvas').waitFor();
  const disc = page.locator('.wb-disc .face');
  await disc.scrollIntoViewIfNeeded();
  await drag(page, disc, 60);
  await browser.startTracing(page, { categories: CATEGORIES });
  await drag(page, disc, STEPS);
  const trace = await browser.stopTracing();
  await page.close();
  return framesOf(JSON.parse(trace.toString()).traceEvents);
}

/** In a page, before its own scripts. */
function leaveDrawingOut(): void {
  const nothing = () => {};
  const drawing = { clear: nothing, drawArrays: nothing, drawElements: nothing, drawElementsInstanced: nothing };
  Object.assign(WebGL2RenderingContext.prototype, drawing);
  Object.assign(CanvasRenderingContext2D.prototype, { clearRect: nothing, drawImage: nothing });
}

/** Round a circle of 40 pixels; the browser answers a move once a frame has taken it. */
async function drag(page: Page, handle: Locator, steps: number): Promise<void> {
  const box = (await handle.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= steps; i++) {
    const angle = (i / 60) * 2 * Math.PI;
    await page.mouse.move(x + 40 * Math.sin(angle), y + 40 * (1 - Math.cos(angle)));
  }
  await page.mouse.move(x, y);
  await page.mouse.up();
}

function quantile(values: readonly number[], share: number): string {
  const sorted = values.toSorted((a, b) => a - b);
  return (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN).toFixed(2).padStart(8);
}

function print(title: string, frames: readonly Frame[]): void {
  console.log(`\n${`${title}: ${frames.length} frames, ms`.padEnd(48)}  median     p95`);
  for (const part of FRAME_PARTS) {
    const values = frames.map((frame) => frame[part]);
    console.log(`${part.padEnd(48)}${quantile(values, 0.5)}${quantile(values, 0.95)}`);
  }
}

const { executablePath, env } = await findBrowser();
const site = await serve(DIST);
const browser = await chromium.launch({
  executablePath,
  args: BROWSER_FLAGS,
  env: { ...(process.env as Record<string, string>), ...env },
});
try {
  print('as it is', await measured(browser, site.address, true));
  print('without the drawing', await measured(browser, site.address, false));
} finally {
  await browser.close();
  await site.close();
}
