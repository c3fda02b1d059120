import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser } from '@playwright/test';
import { strToU8, zipSync } from 'fflate';
import { readTable } from '../../src/delivery/csv/table.ts';
import { answerOf } from '../delivery/support.ts';
import { asOverPlainHttp, fillIn, madeFile, opened, openText, openVane, workAs } from './support/teaching.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, expectAllMet, expectOpen, field, openFile, savedFile } from './support/workbench.ts';

const folder = mkdtempSync(join(tmpdir(), 'class-'));
const put = (name: string, content: string | Uint8Array): string => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

/** A learner in a browser of their own: opens the assignment, solves One vane in their own variant, hands in. */
async function handedIn(browser: Browser, course: string, set: string, learner: string): Promise<string> {
  const context = await browser.newContext({ baseURL: course });
  const page = await context.newPage();
  await openText(page, set);
  await workAs(page, learner);
  await openVane(page).click();
  await expectOpen(page);
  await openFile(page, 'answer.json', JSON.stringify(answerOf(opened(set).assignment, learner, 'one-vane')));
  await button(page, 'Prove it').click();
  await expectAllMet(page);
  const { path } = await savedFile(page, () => button(page, 'Save the file to hand in').click());
  const text = readFileSync(path, 'utf8');
  await context.close();
  return text;
}

async function savedCsv(page: Page, given: { assignment: string; roster: string; files: string }): Promise<string> {
  await page.goto('markbook/index.html');
  await page.getByLabel('The assignment').setInputFiles(given.assignment);
  await page.getByLabel('The roster').setInputFiles(given.roster);
  await page.getByLabel('or a zip, or files').setInputFiles(given.files);
  await page.getByRole('button', { name: 'Mark all' }).click();
  const { path } = await savedFile(page, () => page.getByRole('button', { name: 'Save the marks as CSV' }).click());
  return readFileSync(path, 'utf8');
}

test('from the assignment to the marks: an instructor and three learners, one of them cheating and one late', async ({
  page,
  browser,
  address: course,
}) => {
  test.slow();
  await page.addInitScript(asOverPlainHttp);
  await fillIn(page);
  await field(page, 'Due').fill('2026-12-04T17:00');
  const set = await madeFile(page);
  const assignment = put('set.jws', set);

  const otter = await handedIn(browser, course, set, 'otter-7');
  const heron = await handedIn(browser, course, set, 'heron-1');
  // Toad takes Otter's file and puts another code into it.
  const toad = JSON.stringify({ ...JSON.parse(otter), learner: 'toad-2' });
  const at = (mtime: string) => ({ mtime });
  const zip = zipSync({
    'Otter_Anna/otter.json': [strToU8(otter), at('2026-12-04T10:00:00')],
    'toad (copy).json': [strToU8(toad), at('2026-12-04T11:00:00')],
    'heron.json': [strToU8(heron), at('2026-12-06T10:00:00')],
  });
  const files = put('class.zip', zip);
  const roster = put('class.csv', 'learner,name\r\notter-7,Otter\r\ntoad-2,Toad\r\nheron-1,Heron\r\n');

  const csv = await savedCsv(page, { assignment, roster, files });
  const { head, rows } = readTable(csv);
  const cell = (row: number, title: string) => rows[row]![head.indexOf(title)]!;
  expect(rows.map(([learner]) => learner)).toEqual(['otter-7', 'toad-2', 'heron-1']);
  expect([cell(0, 'mark'), cell(0, 'flags')]).toEqual(['50', '']);
  expect(cell(1, 'flags').split(' ')).toEqual(expect.arrayContaining(['other-variant', 'chain-broken']));
  expect(cell(2, 'flags')).toBe('late');
  expect(Number(cell(2, 'before_late'))).toBe(50);

  const out = join(folder, 'marks.csv');
  const [node, command] = ['node_modules/.bin/node', 'src/cli/counterpose.mjs'].map((path) =>
    resolve(import.meta.dirname, '../..', path),
  );
  execFileSync(node!, [command!, 'markbook', files, '--assignment', assignment, '--roster', roster, '--out', out]);
  expect(csv).toBe(readFileSync(out, 'utf8'));
});
