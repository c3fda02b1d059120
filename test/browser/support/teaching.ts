import { readFileSync } from 'node:fs';
import { type OpenedAssignment, readAssignmentText } from '../../../src/delivery/assignment/readAssignment.ts';
import { expect, type Page } from './test.ts';
import { button, field, savedFile } from './workbench.ts';

/** What an instructor and a learner do on the pages of an assignment. */
export const SAVE = 'Sign it and save the file';

export async function openMaker(page: Page): Promise<void> {
  await page.goto('assignment/');
  await expect(field(page, 'Title')).toBeVisible({ timeout: 20_000 });
}

/** What a browser takes away from pages of an intranet host without https (W3C, Secure Contexts). */
export function asOverPlainHttp() {
  Object.defineProperty(Crypto.prototype, 'subtle', { get: () => undefined });
  Object.defineProperty(Navigator.prototype, 'clipboard', { get: () => undefined });
}

export async function choose(page: Page, chapter: RegExp, exercise: string): Promise<void> {
  const one = page.getByRole('checkbox', { name: exercise });
  if (!(await one.isVisible())) await page.locator('summary', { hasText: chapter }).click();
  await one.check();
}

/** Two small exercises, everything else as it is filled in. */
export async function fillIn(page: Page): Promise<void> {
  await openMaker(page);
  await field(page, 'Title').fill('On the quay');
  await choose(page, /^3 /, 'One vane');
  await choose(page, /^1 /, 'How high the hook');
}

export async function madeFile(page: Page): Promise<string> {
  const { name, path } = await savedFile(page, () => button(page, SAVE).click());
  expect(name).toMatch(/^on-the-quay-[0-9a-z]{6}\.jws$/);
  return readFileSync(path, 'utf8');
}

export async function openText(page: Page, text: string): Promise<void> {
  await page.goto('assignment/open/');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    button(page, 'Open an assignment').click({ timeout: 20_000 }),
  ]);
  await chooser.setFiles({ name: 'set.jws', mimeType: 'application/octet-stream', buffer: Buffer.from(text) });
  await expect(page.getByRole('heading', { name: 'On the quay' })).toBeVisible();
}

export async function workAs(page: Page, learner: string): Promise<void> {
  await field(page, 'Your code').fill(learner);
  await button(page, 'Work under this code').click();
  await expect(page.getByRole('heading', { name: 'Hand in' })).toBeVisible();
}

export function opened(text: string): OpenedAssignment {
  const read = readAssignmentText(text);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value;
}

export const openVane = (page: Page) =>
  page.getByRole('region', { name: /One vane/ }).getByRole('button', { name: /^Open it: One vane/ });
