import type { Locator } from '@playwright/test';

/** A way of working a page: by keyboard, or by single clicks. */
export interface Hand {
  readonly press: (button: Locator) => Promise<void>;
  /** Sets a mark that is not set, or takes away one that is. */
  readonly tick: (box: Locator, on?: boolean) => Promise<void>;
  /** Chooses one of several marks of which one holds. */
  readonly mark: (radio: Locator) => Promise<void>;
  /** Chooses the option that says this. */
  readonly choose: (field: Locator, says: string) => Promise<void>;
  /** Writes over what stands in a field of text or number. */
  readonly write: (field: Locator, text: string) => Promise<void>;
}

/** Works the page by single clicks; what a phone's own keyboard types is typed. */
export const byClicks: Hand = {
  press: (button) => button.click(),
  tick: (box, on = true) => box.setChecked(on),
  mark: (radio) => radio.check(),
  choose: async (field, says) => {
    await field.selectOption({ label: says });
  },
  write: async (field, text) => {
    await field.click();
    await field.fill(text);
    await field.blur();
  },
};
