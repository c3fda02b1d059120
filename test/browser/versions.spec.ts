import { addAim } from './support/answers.ts';
import { expectAxeClean } from './support/axe.ts';
import { forbidStorage } from './support/forbidden-storage.ts';
import { byClicks } from './support/hand.ts';
import { byKeyboard } from './support/keyboard.ts';
import { expectNoSideways } from './support/sideways.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, expectAllMet, expectOpen, field, openExercise } from './support/workbench.ts';

const OPENS = 'Versions of your answer';

test('by keyboard: versions are kept, opened, renamed, taken away and brought back', async ({ page }) => {
  const hand = byKeyboard(page);
  await openExercise(page, 'one-vane');
  await openList(page);
  await hand.write(field(page, 'name of a new version'), 'as given');
  await expect(versions(page)).toContainText(['as given']);
  await expect(versions(page).first()).toContainText('no proof made');

  await addAim(page, hand, 'vane_left', 'kite');
  await hand.press(button(page, 'Prove it'));
  await expectAllMet(page);
  await hand.press(button(page, 'Keep this version'));
  await expect(versions(page).first()).toContainText('proved, mark 100 %');
  await hand.write(field(page, 'name of the version version 2'), 'with an aim');
  await expect(versions(page).first()).toContainText('with an aim');
  await expectAxeClean(page, 'two versions');

  await hand.write(field(page, 'name of a new version'), 'as given');
  await expect(page.getByRole('alert')).toContainText('There is a version called “as given” already');
  await hand.press(button(page, 'Open the version as given'));
  await expect(field(page, 'weight of aim on vane_left')).toHaveCount(0);
  await hand.press(button(page, 'Undo'));
  await expect(field(page, 'weight of aim on vane_left')).toHaveCount(1);

  await hand.press(button(page, 'Take away the version with an aim'));
  await expect(versions(page)).toHaveCount(1);
  await hand.press(button(page, 'Bring it back'));
  await expect(versions(page)).toHaveCount(2);
  await expect(page.locator('.wb :focus')).toHaveCount(1);

  await page.reload();
  await expectOpen(page);
  await openList(page);
  await expect(versions(page)).toContainText(['with an aim', 'as given']);
  await page.setViewportSize({ width: 320, height: 640 });
  await expectNoSideways(page, 'two versions at 400 % zoom');
});

test('a proof made later is written down with the version that holds what was proved', async ({ page }) => {
  await openExercise(page, 'one-vane');
  await openList(page);
  await button(page, 'Keep this version').click();
  await expect(versions(page).first()).toContainText('no proof made');
  await button(page, 'Prove it').click();
  await expect(versions(page).first()).toContainText('not proved, mark');
});

for (const channel of ['that hear of each other', 'that do not hear of each other']) {
  test(`two tabs ${channel} share their versions, and no name stands twice`, async ({ page, context }) => {
    if (channel.includes('not')) {
      await context.addInitScript(() => {
        (globalThis as { BroadcastChannel?: unknown }).BroadcastChannel = undefined;
      });
    }
    await openExercise(page, 'one-vane');
    const other = await context.newPage();
    await openExercise(other, 'one-vane');
    await openList(other);
    await openList(page);
    await byClicks.press(button(page, 'Keep this version'));
    await expect(versions(page)).toHaveCount(1);
    if (channel.includes('not')) {
      await byClicks.press(button(other, 'Keep this version'));
      await expect(other.getByRole('alert')).toContainText('“version 1” already');
      await other.evaluate(() => window.dispatchEvent(new Event('focus')));
    }
    await expect(versions(other)).toHaveCount(1);
    await expect(other.getByRole('alert').filter({ hasText: 'Two tabs' })).toHaveCount(0);
  });
}

test('where the answer is a pose, what stood before is kept before another one is opened', async ({ page }) => {
  await openExercise(page, 'over-the-boat');
  await openList(page);
  await button(page, 'Keep this version').click();
  await page.getByRole('slider').first().focus();
  await page.keyboard.press('End');
  await button(page, 'Open the version version 1').click();
  await expect(versions(page)).toContainText(['before version 1', 'version 1']);
});

test('a full storage is told, and the work stays', async ({ page }) => {
  await page.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (...given: Parameters<typeof put>) {
      if (this.name === 'versions') throw new DOMException('Full.', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
  await openExercise(page, 'one-vane');
  await openList(page);
  await byClicks.write(field(page, 'name of a new version'), 'last words');
  await byClicks.press(button(page, 'Keep this version'));
  await expect(page.getByRole('alert')).toContainText('storage is full');
  await expect(field(page, 'name of a new version')).toHaveValue('last words');
});

test('where storage is forbidden, no version is offered and the reason is told', async ({ page }) => {
  await page.addInitScript(forbidStorage);
  await openExercise(page, 'one-vane');
  await openList(page);
  await expect(page.locator('.wb-versions')).toContainText('does not let the page store anything');
  await expect(button(page, 'Keep this version')).toHaveCount(0);
});

function openList(page: Page): Promise<void> {
  return page.locator('summary').filter({ hasText: OPENS }).click();
}

function versions(page: Page) {
  return page.getByRole('list', { name: 'Kept versions' }).getByRole('listitem');
}
