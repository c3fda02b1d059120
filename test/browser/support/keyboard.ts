import { expect, type Locator, type Page } from '@playwright/test';

/** Presses Tab until the element has the focus. Fails where that takes more than `most` presses. */
export async function tabTo(page: Page, element: Locator, most = 200): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    if (await hasFocus(element)) return;
    await page.keyboard.press('Tab');
  }
  expect(await hasFocus(element), `${element} is reached by Tab in ${most} presses`).toBe(true);
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

function hasFocus(element: Locator): Promise<boolean> {
  return element.evaluate((node) => node === document.activeElement);
}
