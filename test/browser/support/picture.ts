import type { Locator, Page } from '@playwright/test';

export type Rgb = readonly [red: number, green: number, blue: number];

/** A screenshot as its pixels' colours, counted: "251,248,241" to how many. */
export type Colours = ReadonlyMap<string, number>;

/**
 * How much of what is seen of an element differs from its commonest colour: 0 for a blank one, up to 1.
 * Taken from a screenshot, because a WebGL canvas cannot be read back after its frame.
 */
export async function paintedShare(page: Page, element: Locator): Promise<number> {
  const counts = [...(await coloursOf(page, element)).values()];
  return 1 - Math.max(...counts) / counts.reduce((sum, count) => sum + count, 0);
}

/** The colours that an element is seen in, the commonest first. */
export async function coloursOf(page: Page, element: Locator): Promise<Colours> {
  const png = (await element.screenshot({ animations: 'disabled' })).toString('base64');
  const counted = await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
    const counts = new Map<string, number>();
    for (let i = 0; i < data.length; i += 4) {
      const colour = `${data[i]},${data[i + 1]},${data[i + 2]}`;
      counts.set(colour, (counts.get(colour) ?? 0) + 1);
    }
    return [...counts];
  }, png);
  return new Map(counted.sort(([, a], [, b]) => b - a));
}

/** How much of one screenshot differs from another of the same size, 0 to 1. */
export function changedShare(page: Page, before: Buffer, after: Buffer): Promise<number> {
  return page.evaluate(
    async (pngs) => {
      const [a, b] = await Promise.all(
        pngs.map(async (base64) => {
          const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
          const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
          const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
          context.drawImage(bitmap, 0, 0);
          return new Uint32Array(context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
        }),
      );
      if (a!.length !== b!.length) throw new Error('The two screenshots differ in size.');
      return a!.reduce((count, pixel, i) => count + (pixel === b![i] ? 0 : 1), 0) / a!.length;
    },
    [before.toString('base64'), after.toString('base64')],
  );
}
