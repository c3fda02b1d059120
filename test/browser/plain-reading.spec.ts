import { builtPages } from './support/site.ts';
import { expect, test } from './support/test.ts';

test.use({ javaScriptEnabled: false });

for (const path of builtPages()) {
  test(`${path} is read without scripts`, async ({ page }) => {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByRole('navigation').first()).toBeVisible();
  });
}
