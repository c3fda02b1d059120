import { builtPages, isInTurn } from './support/site.ts';
import { expect, test } from './support/test.ts';

test.use({ prefix: '/courses/rigs/' });

// 404.html is shown in place of any address, and so is built for one folder.
for (const path of builtPages().filter((page) => page !== '404.html' && isInTurn(page, 0, 6))) {
  test(`${path} works in any folder of a host`, async ({ page, address }) => {
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    const links = await page
      .locator('a[href]')
      .evaluateAll((nodes) => nodes.map((node) => (node as HTMLAnchorElement).href));
    const own = links.filter((link) => new URL(link).origin === new URL(address).origin);
    expect(own.filter((link) => !link.startsWith(address))).toEqual([]);
    expect(own.length).toBeGreaterThan(0);
  });
}
