import type { Locator, Page } from '@playwright/test';

/**
 * How much of what is seen of an element differs from its commonest colour: 0 for a blank one, up to 1.
 * Taken from a screenshot, because a WebGL canvas cannot be read back after its frame.
 */
export async function paintedShare(page: Page, element: Locator): Promise<number> {
  const png = (await element.screenshot()).toString('base64');
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    const pixels = new Uint32Array(context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
    const counts = new Map<number, number>();
    for (const pixel of pixels) counts.set(pixel, (counts.get(pixel) ?? 0) + 1);
    return 1 - Math.max(...counts.values()) / pixels.length;
  }, png);
}
