import { addAim } from './support/answers.ts';
import { expectAxeClean } from './support/axe.ts';
import { byKeyboard } from './support/keyboard.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, field, openExercise } from './support/workbench.ts';

test('the focus stays in its place while names change and things go', async ({ page }) => {
  const hand = byKeyboard(page);
  await openExercise(page, 'let-go');
  await hand.press(button(page, 'Add a bone'));
  await expect(field(page, 'name of bone')).toBeFocused();
  await hand.write(field(page, 'name of bone'), 'mark');
  await expect(field(page, 'name of mark')).toBeFocused();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('lamp');
  await page.keyboard.press('Tab');
  await expect(field(page, 'role of lamp')).toBeFocused();

  await hand.press(button(page, 'Add a switch to lamp'));
  await hand.write(field(page, 'name of lamp.switch'), 'lit');
  await expect(field(page, 'name of lamp.lit')).toBeFocused();
  await addAim(page, hand, 'lamp', 'wind');
  await hand.write(field(page, 'name of aim on lamp'), 'watch');
  await expect(field(page, 'name of watch on lamp')).toBeFocused();

  await hand.press(button(page, 'Take away watch on lamp'));
  await expectFocusInWorkbench(page);
  await hand.press(button(page, 'Take away lamp'));
  await expectFocusInWorkbench(page);
  while (await button(page, 'Undo').isEnabled()) await hand.press(button(page, 'Undo'));
  await expect(button(page, 'Redo')).toBeFocused();
});

test('a copy is chosen and told of, and stays chosen when it gets its own name', async ({ page }) => {
  const hand = byKeyboard(page);
  await openExercise(page, 'let-go');
  await hand.press(button(page, 'Make a copy of vane_left'));
  await expect(field(page, 'name of vane_2_left')).toBeFocused();
  await expect(field(page, 'chosen bone')).toHaveValue('vane_2_left');
  await expect(page.locator('.wb [role="status"]')).toContainText('vane_2_left is a copy of vane_left: ');
  await hand.write(field(page, 'name of vane_2_left'), 'spare');
  await expect(field(page, 'chosen bone')).toHaveValue('spare');
  await expectAxeClean(page, 'Build with a copy');
  await hand.press(button(page, 'Undo'));
  await expect(field(page, 'chosen bone')).toHaveValue('vane_2_left');
});

async function expectFocusInWorkbench(page: Page): Promise<void> {
  await expect(page.locator('.wb :focus')).toHaveCount(1);
}
