import { ANSWERS } from './support/answers.ts';
import { byKeyboard } from './support/keyboard.ts';
import { paintedShare } from './support/picture.ts';
import { expect, test } from './support/test.ts';
import { button, expectAllMet, openExercise, plate } from './support/workbench.ts';

test.use({ webgl: false });

test('one-vane is solved by the pose table where there is no WebGL', async ({ page }) => {
  const hand = byKeyboard(page);
  await openExercise(page, 'one-vane');
  await expect(page.locator('canvas')).toHaveCount(0);
  await expect(plate(page).getByRole('img')).toBeVisible();
  expect(await paintedShare(page, plate(page))).toBeGreaterThan(0.01);
  await hand.press(page.locator('summary', { hasText: 'The pose in numbers' }));
  const vane = page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: 'vane_left' }) });
  const turnY = vane.getByRole('cell').nth(4);

  await hand.press(button(page, 'Try'));
  await hand.write(page.getByRole('spinbutton', { name: 'move x of kite, in metres' }), '1.2');
  await expect(turnY).toHaveText('0');

  await hand.press(button(page, 'Build'));
  await ANSWERS['one-vane']!(page, hand);
  await hand.press(button(page, 'Try'));
  // The kite flies 1.2 m ahead of the vane and 1.2 m aside: 45° by trigonometry.
  await expect(turnY).toHaveText('45');
  const told = page.locator('[aria-live="polite"]').filter({ hasText: 'vane_left: base' });
  await expect(told).toContainText('vane_left: base 0.4, 1.5, 0, turn 0, 45, 0, length 0.3.');

  await hand.press(button(page, 'Prove it'));
  await expectAllMet(page);
});
