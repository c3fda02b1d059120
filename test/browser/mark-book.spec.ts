import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { makeKey } from '../../src/delivery/assignment/keys.ts';
import { sign } from '../../src/delivery/assignment/sign.ts';
import { readTable } from '../../src/delivery/csv/table.ts';
import { answerOf, assignmentOf } from '../delivery/support.ts';
import { expectAxeClean } from './support/axe.ts';
import { expect, type Page, test } from './support/test.ts';

const folder = mkdtempSync(join(tmpdir(), 'mark-book-'));
const put = (name: string, content: string | Uint8Array): string => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

const assignment = assignmentOf();
const A = put('assignment.json', sign(assignment, makeKey(new Uint8Array(32).fill(3))));
const R = put('class.csv', 'learner,name\r\notter-7,"Otter, Anna"\r\ntoad-2,Toad\r\nheron-1,Heron\r\n');
const IN_TIME = '2026-12-04T10:00:00';
const LATE = '2026-12-05T10:00:00';
const submission = (learner: string, owner = learner) =>
  JSON.stringify({
    format: 'counterpose/submission',
    version: 1,
    assignment: assignment.id,
    learner,
    answers: [
      answerOf(assignment, owner, 'one-vane', { wrong: learner === 'heron-1' }),
      answerOf(assignment, owner, 'how-high-the-hook'),
    ],
  });

/** One honest and in time, one who copied, one late and with a wrong turn; strays among them. */
const ZIP = put(
  'class.zip',
  zipSync({
    'Otter_Anna_12/work (1).json': [strToU8(submission('otter-7')), { mtime: IN_TIME }],
    'toad.txt': [strToU8(submission('toad-2', 'otter-7')), { mtime: IN_TIME }],
    'Heron/final FINAL.json': [strToU8(submission('heron-1')), { mtime: LATE }],
    '__MACOSX/._work.json': [strToU8('x'), { mtime: IN_TIME }],
    '<img src=x onerror=alert(1)>.json': [strToU8('{"format":'), { mtime: IN_TIME }],
  }),
);

async function marked(page: Page): Promise<void> {
  await page.goto('markbook/index.html');
  await page.getByLabel('The assignment').setInputFiles(A);
  await expect(page.getByText(/signed by [\w-]{4} /)).toBeVisible();
  await page.getByLabel('The roster').setInputFiles(R);
  await page.getByLabel('or a zip, or files').setInputFiles(ZIP);
  await page.getByRole('button', { name: 'Mark all' }).click();
  await expect(page.getByRole('row', { name: /Otter, Anna/ })).toContainText('100 %, passed');
}

async function saved(page: Page, button: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return readFileSync(await download.path());
}

test('a class is marked, looked at, written on and given out, as the command line does it', async ({ page }) => {
  await marked(page);
  await expect(page.getByRole('row', { name: /Toad/ })).toContainText('somebody else’s variant');
  await expect(page.getByRole('row', { name: /Heron/ })).toContainText('late');
  await page.getByText('2 files are nobody’s work').click();
  await expect(page.getByText('<img src=x onerror=alert(1)>.json')).toBeVisible();
  await expectAxeClean(page, 'the mark book with a class in it');

  const csv = (await saved(page, 'Save the marks as CSV')).toString();
  const out = join(folder, 'marks.csv');
  const command = resolve(import.meta.dirname, '../../src/cli/counterpose.mjs');
  const node = resolve(import.meta.dirname, '../../node_modules/.bin/node');
  execFileSync(node, [command, 'markbook', ZIP, '--assignment', A, '--roster', R, '--out', out]);
  expect(csv).toBe(readFileSync(out, 'utf8'));

  await page.getByRole('button', { name: 'Heron' }).click();
  await page.getByRole('button', { name: 'See it on the plate' }).first().click();
  await expect(page.locator('.wb-plate')).toBeVisible();
  const hook = page.locator('.mb-sheet > div').filter({ hasText: 'how-high-the-hook' });
  await hook.getByRole('button', { name: 'See the answer on the plate' }).click();
  await expect(hook.getByText(/Answered: \{"values"/)).toBeVisible();
  await page.getByLabel('Your name').fill('Instructor');
  await page.getByLabel('Write').selectOption('a mark by hand');
  await page.getByLabel('Mark in per cent').fill('100');
  await page.getByLabel('Reason').fill('the task was unclear');
  await page.getByRole('button', { name: 'Write it into the book' }).click();
  await expect(page.getByText(/100 % by hand, because the task was unclear/)).toBeVisible();
  await expect(page.getByRole('row', { name: /Heron/ })).toContainText('90 %, passed');

  const feedback = unzipSync(new Uint8Array(await saved(page, 'Save feedback')));
  expect(Object.keys(feedback)).toEqual(['1-otter-7.json', '2-toad-2.json', '3-heron-1.json']);
  const heron = JSON.parse(new TextDecoder().decode(feedback['3-heron-1.json']));
  expect(heron).toMatchObject({
    learner: 'heron-1',
    mark: 0.9,
    says: [{ says: 'Marked by hand: the task was unclear' }],
  });

  const book = put('book.json', await saved(page, 'Save the book'));
  await page.goto('markbook/index.html');
  await page.getByLabel('Or open a book').setInputFiles(book);
  await expect(page.getByRole('row', { name: /Heron/ })).toContainText('90 %, passed');
  expect(readTable(csv).rows).toHaveLength(3);
});

test('a forged assignment, and a book with a mark above all, are refused in words', async ({ page }) => {
  await page.goto('markbook/index.html');
  await page
    .getByLabel('The assignment')
    .setInputFiles(put('forged.json', readFileSync(A, 'utf8').replace(/\.[^.]([^.]*)$/, '.A$1')));
  await expect(page.getByRole('alert')).toContainText('is no assignment');
  const book = { format: 'counterpose/markbook', version: 1, assignment: {}, learners: [], strays: [] };
  await page.getByLabel('Or open a book').setInputFiles(put('odd.json', JSON.stringify(book)));
  await expect(page.getByRole('status')).toContainText('is no mark book. At /assignment');
});
