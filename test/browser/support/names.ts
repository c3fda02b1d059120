import type { Page } from '@playwright/test';

/** Names that more than one field, button or handle of the workbench has, and '' where one has none. */
export function sharedNames(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const worked = ':is(button, input, select, summary, [tabindex="0"])';
    const all = [...document.querySelectorAll<HTMLElement>(`.wb ${worked}`)].filter((each) => each.checkVisibility());
    const names = all.map((each) => {
      const label = each instanceof HTMLInputElement ? each.labels?.[0] : null;
      return (each.ariaLabel ?? (label ?? each).textContent).replaceAll(/\s+/g, ' ').trim();
    });
    return [...new Set(names.filter((name, i) => name === '' || names.indexOf(name) !== i))];
  });
}
