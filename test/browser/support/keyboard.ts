import { expect, type Locator, type Page } from '@playwright/test';
import type { Hand } from './hand.ts';

/** Presses Tab, or Shift+Tab where the element comes before, until it has the focus. Fails after `most` presses. */
export async function tabTo(page: Page, element: Locator, most = 300): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    const way = await wayTo(element);
    if (way === 'there') return;
    await page.keyboard.press(way === 'back' ? 'Shift+Tab' : 'Tab');
  }
  expect(await wayTo(element), `${element} is reached by Tab in ${most} presses`).toBe('there');
}

/** The element or something in it has the focus, and the focus can be seen. */
export async function expectVisibleFocus(element: Locator): Promise<void> {
  await expect(element).toBeFocused();
  const outline = await element.evaluate((node) => {
    const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(node);
    return { outlined: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0, shadowed: boxShadow !== 'none' };
  });
  expect(outline.outlined || outline.shadowed, `the focus on ${element} can be seen`).toBe(true);
}

/** Works the page by Tab, arrows, letters and Enter alone. */
export function byKeyboard(page: Page): Hand {
  return {
    press: async (button) => {
      await tabTo(page, button);
      await expectVisibleFocus(button);
      await page.keyboard.press('Enter');
    },
    tick: async (box, on = true) => {
      await tabTo(page, box);
      await expectVisibleFocus(box);
      await page.keyboard.press('Space');
      await expect(box).toBeChecked({ checked: on });
    },
    mark: async (radio) => {
      // Tab leads to the first of them, arrows from one to the next.
      const group = page.getByRole('radiogroup').or(page.getByRole('group')).filter({ has: radio }).last();
      const first = group.getByRole('radio').first();
      await tabTo(page, first);
      await expectVisibleFocus(first);
      await page.keyboard.press('Space');
      for (let most = await group.getByRole('radio').count(); most > 0 && !(await radio.isChecked()); most--) {
        await page.keyboard.press('ArrowDown');
      }
      await expect(radio).toBeChecked();
    },
    choose: async (field, says) => {
      await tabTo(page, field);
      await expectVisibleFocus(field);
      await page.keyboard.type(says);
      await arrowTo(page, field, says);
    },
    write: async (field, text) => {
      await tabTo(page, field);
      await expectVisibleFocus(field);
      await page.keyboard.press('Control+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
  };
}

/** Letters lead to the first choice that begins with them; arrows lead on from there. */
async function arrowTo(page: Page, field: Locator, says: string): Promise<void> {
  const steps = await field.evaluate((node, wanted) => {
    const { options, selectedIndex } = node as HTMLSelectElement;
    return [...options].findIndex(({ label }) => label === wanted) - selectedIndex;
  }, says);
  for (let i = 0; i < Math.abs(steps); i++) await page.keyboard.press(steps < 0 ? 'ArrowUp' : 'ArrowDown');
  await expect(field.locator('option:checked')).toHaveText(says);
}

function wayTo(element: Locator): Promise<'there' | 'on' | 'back'> {
  return element.evaluate((node) => {
    const { activeElement } = document;
    if (node === activeElement) return 'there';
    if (!activeElement || activeElement === document.body) return 'on';
    const isBefore = activeElement.compareDocumentPosition(node) & Node.DOCUMENT_POSITION_PRECEDING;
    return isBefore ? 'back' : 'on';
  });
}
