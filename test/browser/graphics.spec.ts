import { paintedShare } from './support/picture.ts';
import { expect, test } from './support/test.ts';

test('the browser draws with WebGL 2 without a graphics card', async ({ page }) => {
  await page.goto('.');
  await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.id = 'drawn';
    canvas.width = 80;
    canvas.height = 60;
    document.body.replaceChildren(canvas);
    const gl = canvas.getContext('webgl2')!;
    gl.enable(gl.SCISSOR_TEST);
    gl.clearColor(0.6, 0.2, 0.2, 1);
    gl.clear(gl.COLOR_BUFFER_BIT);
    gl.scissor(0, 0, 40, 60);
    gl.clearColor(0.1, 0.4, 0.3, 1);
    gl.clear(gl.COLOR_BUFFER_BIT);
  });
  expect(await paintedShare(page, page.locator('#drawn'))).toBeCloseTo(0.5, 1);
});

test('a blank canvas counts as blank', async ({ page }) => {
  await page.goto('.');
  await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.id = 'blank';
    document.body.replaceChildren(canvas);
  });
  expect(await paintedShare(page, page.locator('#blank'))).toBe(0);
});

test.describe('without WebGL', () => {
  test.use({ webgl: false });

  test('the pages are told that there is none', async ({ page }) => {
    await page.goto('.');
    const contexts = await page.evaluate(() =>
      ['webgl', 'webgl2', '2d'].map((kind) => document.createElement('canvas').getContext(kind) !== null),
    );
    expect(contexts).toEqual([false, false, true]);
  });
});
