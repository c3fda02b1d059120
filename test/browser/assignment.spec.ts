import { readFileSync } from 'node:fs';
import { AssignmentGrader } from '../../src/delivery/mark/gradeAnswer.ts';
import { markSubmission } from '../../src/delivery/mark/markSubmission.ts';
import { readSubmissionText } from '../../src/delivery/submission/readSubmission.ts';
import { seedOf } from '../../src/delivery/variant/seed.ts';
import { answerOf } from '../delivery/support.ts';
import { watchFaults } from './support/faults.ts';
import { forbidStorage } from './support/forbidden-storage.ts';
import {
  asOverPlainHttp,
  choose,
  fillIn,
  madeFile,
  opened,
  openMaker,
  openText,
  openVane,
  SAVE,
  workAs,
} from './support/teaching.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, expectAllMet, expectOpen, field, openFile, proofSheet, savedFile } from './support/workbench.ts';

/** Opens the learner's own variant of One vane and proves an answer from a file. */
async function solveVane(page: Page, text: string, wrong: boolean): Promise<void> {
  const answer = answerOf(opened(text).assignment, 'toad', 'one-vane', { wrong });
  await openFile(page, 'answer.json', JSON.stringify(answer));
  await button(page, 'Prove it').click();
}

/** What a prediction is answered with. */
const numbers = (page: Page) => page.getByRole('region', { name: /^Your answer/ }).getByRole('spinbutton');

test('what an instructor sets, a learner opens, solves in part and hands in, and the core marks as it should', async ({
  page,
  browser,
  address: course,
}) => {
  await page.addInitScript(asOverPlainHttp);
  await fillIn(page);
  const text = await madeFile(page);
  const set = opened(text);
  expect(set.signedBy).not.toBeNull();
  expect(set.assignment).toMatchObject({
    title: 'On the quay',
    passMark: 0.6,
    exercises: [{ weight: 1 }, { weight: 1 }],
  });
  const thumbprint = (await page.locator('.thumbprint').textContent())!;
  const address = await field(page, 'The address that opens it').inputValue();

  const other = await browser.newContext();
  const faults = await watchFaults(other, course);
  const learner = await other.newPage();
  await learner.addInitScript(asOverPlainHttp);
  await learner.goto(address);
  await expect(learner.getByRole('heading', { name: 'On the quay' })).toBeVisible({ timeout: 20_000 });
  await expect(learner.locator('.thumbprint')).toHaveText(thumbprint);
  await workAs(learner, 'toad');
  await openVane(learner).click();
  await expectOpen(learner);
  await solveVane(learner, text, true);
  await expect(learner.getByText('One proof, best so far')).toBeVisible({ timeout: 30_000 });
  await solveVane(learner, text, false);
  await expectAllMet(learner);
  await expect(learner.getByText('2 proofs, best so far 100 %')).toBeVisible();

  await learner.reload();
  await expect(learner.getByText('2 proofs, best so far 100 %')).toBeVisible({ timeout: 20_000 });
  const { name, path } = await savedFile(learner, () => button(learner, 'Save the file to hand in').click());
  expect(name).toBe(`toad-${set.assignment.id}.json`);
  const submission = readSubmissionText(readFileSync(path, 'utf8'));
  if (!submission.ok) throw new Error(JSON.stringify(submission.refusal));
  // One of two exercises of the same weight.
  const marked = markSubmission(set, new AssignmentGrader(set), submission.value, null);
  expect(marked).toMatchObject({ mark: 0.5, learner: 'toad', chain: 'whole', flags: [] });

  await expect(learner.getByRole('heading', { name: 'Receipts of what you saved' })).toBeVisible();
  await field(learner, 'A receipt').fill(marked.receipt.toLowerCase());
  const [chooser] = await Promise.all([
    learner.waitForEvent('filechooser'),
    button(learner, 'Check a submission against it').click(),
  ]);
  await chooser.setFiles(path);
  await expect(learner.getByText('It fits')).toBeVisible();
  expect(faults, 'faults in the learner’s browser').toEqual([]);
  await other.close();
});

test('tolerances that part right from wrong no more are refused before anything is saved', async ({ page }) => {
  await openMaker(page);
  await field(page, 'Title').fill('On the quay');
  await choose(page, /^4 /, 'Half of the one');
  await page.getByText('Tolerances of Half of the one, half of the other, as authored').click();
  const tolerance = page
    .getByRole('group')
    .filter({ hasText: 'Tolerances of Half of the one' })
    .getByRole('spinbutton');
  await tolerance.fill('10');
  await button(page, SAVE).click();
  await expect(page.getByRole('alert').filter({ hasText: 'do not part right from wrong' })).toBeVisible({
    timeout: 60_000,
  });
  await tolerance.fill('0.2');
  const text = await madeFile(page);
  expect(opened(text).assignment.exercises[0]!.tolerances).toEqual({ height: 0.2 });

  await openText(page, text);
  await workAs(page, 'toad');
  await page.getByRole('button', { name: /^Open it/ }).click();
  await expectOpen(page);
  await numbers(page).fill('1000');
  await button(page, 'Prove it').click();
  await expect(proofSheet(page)).toContainText('0.2 cm is allowed', { timeout: 30_000 });
});

test('where each attempt is another drawing, the next one is the learner’s second', async ({ page }) => {
  await fillIn(page);
  const text = await madeFile(page);
  await openText(page, text);
  await workAs(page, 'toad');
  const hook = page.getByRole('region', { name: /^How high/ }).first();
  await hook.getByRole('button', { name: /^Open it/ }).click();
  await expectOpen(page);
  for (const attempt of [1, 2]) {
    for (const number of await numbers(page).all()) await number.fill('12');
    await button(page, 'Prove it').click();
    await expect(page.getByText(attempt === 1 ? /^One proof, best/ : /^2 proofs, best/)).toBeVisible();
    await button(page, 'Draw another').click();
    await expect(button(page, 'Draw another')).toBeHidden();
  }
  const { path } = await savedFile(page, () => button(page, 'Save the file to hand in').click());
  const { answers } = JSON.parse(readFileSync(path, 'utf8'));
  const { assignment } = opened(text);
  expect(answers).toMatchObject(
    [1, 2].map((attempt) => ({ attempt, seed: seedOf(assignment.id, 'toad', 'how-high-the-hook', attempt) })),
  );
});

test('a file that was changed after it was signed is refused', async ({ page }) => {
  await fillIn(page);
  const [head, payload, signature] = (await madeFile(page)).split('.');
  const changed = JSON.parse(Buffer.from(payload!, 'base64url').toString());
  changed.passMark = 0;
  await page.goto('assignment/open/');
  const text = [head, Buffer.from(JSON.stringify(changed)).toString('base64url'), signature].join('.');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    button(page, 'Open an assignment').click({ timeout: 20_000 }),
  ]);
  await chooser.setFiles({ name: 'set.jws', mimeType: 'text/plain', buffer: Buffer.from(text) });
  await expect(page.getByRole('alert').filter({ hasText: 'a signature that does not fit' })).toBeVisible();
});

test.describe('where storage is forbidden', () => {
  test.beforeEach(({ context }) => context.addInitScript(forbidStorage));

  test('an assignment can be made, opened and handed in, and it is said that nothing is kept', async ({ page }) => {
    await fillIn(page);
    await expect(page.getByRole('alert').filter({ hasText: 'does not let the page store' })).toBeVisible();
    const text = await madeFile(page);
    await openText(page, text);
    await workAs(page, 'toad');
    await expect(page.getByRole('alert').filter({ hasText: 'lasts until you leave the page' })).toBeVisible();
    await openVane(page).click();
    await expectOpen(page);
    await solveVane(page, text, false);
    await expect(page.getByText('One proof, best so far 100 %')).toBeVisible({ timeout: 30_000 });
    const { path } = await savedFile(page, () => button(page, 'Save the file to hand in').click());
    expect(JSON.parse(readFileSync(path, 'utf8')).answers).toHaveLength(1);
  });
});
