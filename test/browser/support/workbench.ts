import { expect, type Locator, type Page } from '@playwright/test';

/** Opens an exercise on its own page and waits until its workbench has brought back what was kept. */
export async function openExercise(page: Page, exercise: string): Promise<void> {
  await page.goto(`exercises/${exercise}/`);
  await expectOpen(page);
}

export async function expectOpen(page: Page): Promise<void> {
  await expect(page.getByRole('button', { name: 'Prove it' })).toBeVisible({ timeout: 20_000 });
}

export function mechanism(page: Page): Locator {
  return page.getByRole('region', { name: 'Mechanism' });
}

export function proofSheet(page: Page): Locator {
  return page.getByRole('region', { name: 'Proof sheet' });
}

export function field(page: Page, name: string): Locator {
  return page.getByLabel(name, { exact: true });
}

export function button(page: Page, name: string): Locator {
  return page.getByRole('button', { name, exact: true });
}

/** The picture on the plate: drawn by WebGL, or plain. */
export function plate(page: Page): Locator {
  return page.locator('.wb-frame').first();
}

/** What the proof says in one line: "Proved: all 10 requirements are met. Mark 100 %." */
export function verdict(page: Page): Locator {
  return proofSheet(page).locator('.wb-verdict');
}

/** Every requirement on the sheet says met, and the mark is full. */
export async function expectAllMet(page: Page): Promise<void> {
  await expect(verdict(page)).toContainText('Mark 100 %', { timeout: 30_000 });
  await expect(verdict(page)).toContainText('Proved');
  const lines = proofSheet(page).locator('.wb-requirement');
  expect(await lines.count()).toBeGreaterThan(0);
  await expect(proofSheet(page).locator('.wb-requirement.met')).toHaveCount(await lines.count());
  await expect(lines.filter({ hasText: /missed|not checked/ })).toHaveCount(0);
}

/** Chooses a file in "Open a file", as the browser's own dialog does. */
export async function openFile(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button(page, 'Open a file').click()]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** The text of the file that pressing "Save to a file" gives. */
export async function savedFile(page: Page, press: () => Promise<void>): Promise<{ name: string; path: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), path: await download.path() };
}
