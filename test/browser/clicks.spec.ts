import { ANSWERS } from './support/answers.ts';
import { byClicks } from './support/hand.ts';
import { changedShare } from './support/picture.ts';
import { expectNoSideways } from './support/sideways.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, expectAllMet, field, openExercise, plate, verdict } from './support/workbench.ts';

/** A telephone; and a desk of 1280 px at 400 %, as WCAG 2.1 (1.4.10) has it. */
const WIDTHS = [360, 320];

for (const width of WIDTHS) {
  test.describe(`${width} px wide`, () => {
    test.use({ width });

    test('one-vane is solved by single clicks, and nothing scrolls sideways', async ({ page }) => {
      await openExercise(page, 'one-vane');
      await expectNoSideways(page, 'Build');
      for (const rest of await page.getByRole('button', { name: 'Rest and locks' }).all()) await rest.click();
      await byClicks.press(button(page, 'Add a link to quay'));
      await expectNoSideways(page, 'Build with sentences open');
      await byClicks.press(button(page, 'leave it'));

      await ANSWERS['one-vane']!(page, byClicks);
      await byClicks.press(button(page, 'Try'));
      for (let i = 0; i < 3; i++) await byClicks.press(button(page, 'More move x of kite'));
      await expect(page.getByRole('spinbutton', { name: 'move x of kite, in metres' })).toHaveValue('0.03');
      await page.getByText('The pose in numbers', { exact: true }).click();
      await expectNoSideways(page, 'Try');

      await byClicks.press(button(page, 'Prove it'));
      await expectAllMet(page);
      await expectNoSideways(page, 'the proof');
    });

    test('a missed proof does not scroll sideways', async ({ page }) => {
      await openExercise(page, 'two-vanes-one-holder');
      await byClicks.press(button(page, 'Prove it'));
      await expect(verdict(page)).toBeVisible();
      await byClicks.press(button(page, 'A hint'));
      await expectNoSideways(page, 'the proof with its misses');
    });
  });
}

test.describe('locks', () => {
  test.use({ width: 360 });

  test('are ticked in rows that are not chosen', async ({ page }) => {
    await openExercise(page, 'what-may-be-touched');
    for (const rest of await page.getByRole('button', { name: 'Rest and locks' }).all()) await rest.click();
    for (const bone of ['lamp_helper', 'boom', 'spot']) {
      const lock = field(page, `lock size x of ${bone}`);
      await byClicks.tick(lock);
      await expect(lock).toBeChecked();
      await expect(field(page, 'chosen bone')).toHaveValue(bone);
    }
  });
});

test.describe('the plate', () => {
  test.use({ width: 360 });

  test('is looked at from each side by clicks', async ({ page }) => {
    await openExercise(page, 'one-vane');
    let before = await plate(page).screenshot();
    for (const view of ['From the front', 'From above', 'From the side', 'Nearer', 'Farther']) {
      await byClicks.press(button(page, view));
      const after = await plate(page).screenshot();
      expect(await changedShare(page, before, after), view).toBeGreaterThan(0.001);
      before = after;
    }
  });

  test('has handles that a click and arrow keys move', async ({ page }) => {
    await openExercise(page, 'one-vane');
    await byClicks.press(button(page, 'From the front'));
    await byClicks.press(button(page, 'Try'));
    await byClicks.choose(field(page, 'chosen bone'), 'kite');
    const bead = handle(page, 'slider', 'move x of kite, on the plate');
    await bead.locator('.face').click();
    await expect(bead).toBeFocused();
    const before = await plate(page).screenshot();
    for (let i = 0; i < 3; i++) await page.keyboard.press('PageUp');
    const metres = Number(await bead.getAttribute('aria-valuenow'));
    expect(metres).toBeGreaterThan(0);
    await expect(page.getByRole('spinbutton', { name: 'move x of kite, in metres' })).toHaveValue(String(metres));
    expect(await changedShare(page, before, await plate(page).screenshot())).toBeGreaterThan(0.001);

    const disc = handle(page, 'button', 'Slide kite in the view’s plane');
    await disc.locator('.face').click();
    await page.keyboard.press('ArrowUp');
    const height = page.getByRole('spinbutton', { name: 'move y of kite, in metres' });
    await expect(height).not.toHaveValue('0');

    await byClicks.choose(field(page, 'what the handles do'), 'turn it about y');
    const protractor = handle(page, 'slider', 'turn y of kite, on the plate');
    await protractor.locator('.face').click();
    await page.keyboard.press('ArrowRight');
    await expect(protractor).toHaveAttribute('aria-valuenow', '1');
  });
});

function handle(page: Page, role: 'slider' | 'button', name: string) {
  return plate(page).getByRole(role, { name });
}
