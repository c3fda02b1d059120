import { expectAxeClean } from './support/axe.ts';
import { expectNoSideways } from './support/sideways.ts';
import { choose, fillIn, madeFile, opened, openMaker, openText, openVane, workAs } from './support/teaching.ts';
import { expect, test } from './support/test.ts';
import { THEMES, WIDTHS } from './support/themes.ts';
import { button, expectOpen, field, savedFile } from './support/workbench.ts';

test('the form, the key and the id are there again; the key goes to a file and comes back', async ({ page }) => {
  await fillIn(page);
  const first = opened(await madeFile(page));
  const key = await savedFile(page, () => button(page, 'Save the key to a file').click());
  await page.reload();
  await expect(field(page, 'Title')).toHaveValue('On the quay');
  await page.evaluate(() => indexedDB.deleteDatabase('counterpose-teaching'));
  await fillIn(page);
  await expect(page.getByText('There is no key in this browser yet')).toBeVisible();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    button(page, 'Take a key from a file').click(),
  ]);
  await chooser.setFiles(key.path);
  await expect(page.locator('.thumbprint')).toBeVisible();
  const second = opened(await madeFile(page));
  expect(second.signedBy).toBe(first.signedBy);
  expect(second.assignment.id).not.toBe(first.assignment.id);
});

test('a learner’s variant is named, and opens', async ({ page }) => {
  await fillIn(page);
  await field(page, 'A learner’s code').fill('heron');
  const link = page.getByRole('link', { name: /^One vane/ });
  await expect(link).toHaveAttribute('href', /exercises\/one-vane\/index\.html\?seed=\d+$/);
});

test('an assignment that is too long for an address is a file', async ({ page }) => {
  await openMaker(page);
  await field(page, 'Title').fill('On the quay');
  await choose(page, /^6 /, 'gaze');
  await madeFile(page);
  await expect(page.getByText('it is too long for an address')).toBeVisible();
});

for (const theme of THEMES) {
  test.describe(`by ${theme}`, () => {
    test.use({ theme });

    test('both pages fit a telephone and are open to everyone', async ({ page }) => {
      await fillIn(page);
      await field(page, 'Due').fill('2030-12-04T17:00');
      const text = await madeFile(page);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 800 });
        await expectNoSideways(page, `making, ${width} px`);
        await expectAxeClean(page, `making, ${width} px, by ${theme}`);
      }
      await openText(page, text);
      await workAs(page, 'toad');
      await openVane(page).click();
      await expectOpen(page);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 800 });
        await expectNoSideways(page, `opened, ${width} px`);
        await expectAxeClean(page, `opened, ${width} px, by ${theme}`);
      }
    });
  });
}
