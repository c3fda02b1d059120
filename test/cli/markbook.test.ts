import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { expect, test, vi } from 'vitest';
import type { Book } from '../../src/delivery/book/book.ts';
import { readTable } from '../../src/delivery/csv/table.ts';
import { withStep } from '../../src/delivery/submission/chain.ts';
import { answerOf, assignmentOf } from '../delivery/support.ts';
import { counterpose, LAUNCHER, NODE } from './command.ts';
import { temporaryFolder } from './folder.ts';

vi.setConfig({ testTimeout: 180_000 });
const folder = temporaryFolder();
const assignment = assignmentOf();
const A = folder.put('a.json', assignment);
const ROSTER = folder.put(
  'r.csv',
  'learner,name\r\notter-7,"Otter, Anna"\r\ntoad-2,=HYPERLINK("x")\r\nheron-1,Heron\r\n',
);
const IN_TIME = new Date('2026-12-04T12:00:00Z');
const LATE = new Date('2026-12-05T12:00:00Z');

function submissionOf(learner: string, answers: unknown[]) {
  const chain = withStep(
    [],
    { assignment: assignment.id, learner },
    { at: 'then', exercise: 'one-vane', answer: answers[0] },
  );
  return { format: 'counterpose/submission', version: 1, assignment: assignment.id, learner, answers, chain };
}
const both = (learner: string, wrong = false) => [
  answerOf(assignment, learner, 'one-vane', { wrong }),
  answerOf(assignment, learner, 'how-high-the-hook'),
];

/** Renamed, nested and strewn with strays, as a school's system and a person's hands leave it. */
const FILES: Record<string, [content: string, time: Date]> = {
  'Otter, Anna_4711/work (1).json': [JSON.stringify(submissionOf('otter-7', both('otter-7', true))), IN_TIME],
  'Otter, Anna_4711/work (2).json': [JSON.stringify(submissionOf('otter-7', both('otter-7'))), LATE],
  'toad.txt': [JSON.stringify({ ...submissionOf('toad-2', both('otter-7')), mark: undefined }), IN_TIME],
  'gull/answer.json': [JSON.stringify(answerOf(assignment, 'gull-9', 'one-vane')), IN_TIME],
  'notes/readme.txt': ['Dear all', IN_TIME],
  '__MACOSX/._work.json': ['x', IN_TIME],
  'broken.json': ['{"format":"counterpose/submission"', IN_TIME],
  'deep.json': ['{"a":'.repeat(5000), IN_TIME],
};

function laid(): string {
  const path = join(folder.path, 'in');
  for (const [name, [content, time]] of Object.entries(FILES)) {
    mkdirSync(dirname(join(path, name)), { recursive: true });
    writeFileSync(join(path, name), content);
    utimesSync(join(path, name), time, time);
  }
  return path;
}
const IN = laid();
const bookOf = (stdout: string) => JSON.parse(stdout) as Book;
const flagsIn = (book: Book) => Object.fromEntries(book.learners.map(({ learner, flags }) => [learner, flags]));

test('a folder by somebody else’s hands goes through, and what is off is flagged', async () => {
  const out = join(folder.path, 'marks.csv');
  const back = join(folder.path, 'back');
  const args = [
    'markbook',
    IN,
    '--assignment',
    A,
    '--roster',
    ROSTER,
    '--out',
    out,
    '--feedback',
    back,
    '--secret',
    '5',
    '--json',
  ];
  const { status, stdout, stderr } = await counterpose(args);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  const book = bookOf(stdout);
  expect(book.learners.map(({ learner }) => learner)).toEqual(['otter-7', 'toad-2', 'heron-1', 'gull-9']);
  expect(flagsIn(book)).toEqual({
    'otter-7': ['unsigned', 'late', 'chain-lacks-answers', 'resubmitted'],
    'toad-2': expect.arrayContaining(['other-variant', 'names-another-learner']),
    'heron-1': [],
    'gull-9': expect.arrayContaining(['unsigned', 'unknown-learner']),
  });
  expect(book.strays.map(({ path }) => path).sort()).toEqual(
    ['__MACOSX/._work.json', 'broken.json', 'deep.json', 'notes/readme.txt'].sort(),
  );
  const { head, rows } = readTable(readFileSync(out, 'utf8'));
  const cell = (row: number, title: string) => rows[row]![head.indexOf(title)];
  expect([cell(0, 'name'), cell(0, 'mark'), cell(0, 'before_late')]).toEqual(['Otter, Anna', '90', '100']);
  expect(cell(1, 'name')).toBe(`'=HYPERLINK("x")`);
  expect(cell(2, 'mark')).toBe('0');
  expect(readdirSync(back)).toHaveLength(4);
});

test('zipped it gives the same marks, the times of the zip being those of the files', async () => {
  const entries = Object.entries(FILES).map(([name, [content, mtime]]) => [name, [strToU8(content), { mtime }]]);
  const zip = folder.put('class.zip', zipSync(Object.fromEntries(entries)));
  const [plain, zipped] = await Promise.all(
    [IN, zip].map((path) =>
      counterpose(['markbook', path, '--assignment', A, '--roster', ROSTER, '--secret', '5', '--json']),
    ),
  );
  expect(flagsIn(bookOf(zipped!.stdout))).toEqual(flagsIn(bookOf(plain!.stdout)));
});

test('the best of several counts where that is the rule', async () => {
  const { stdout } = await counterpose(['markbook', IN, '--assignment', A, '--best', '--json']);
  const otter = bookOf(stdout).learners.find(({ learner }) => learner === 'otter-7')!;
  const marks = otter.handedIn.map(({ marked }) => marked.mark);
  expect(marks[0]).toBeLessThan(marks[1]!);
  expect(otter.counted).toBe(1);
});

test('marks are filled into a table of the instructor’s own', async () => {
  const theirs = folder.put('theirs.csv', '\ufeffNo.;Who;Points\n1;toad-2;\n2;otter-7;old\n3;crow-3;kept\n');
  const args = ['markbook', IN, '--assignment', A, '--fill', theirs, '--columns', 'Who,Points', '--secret', '5'];
  expect(await counterpose(args)).toMatchObject({ status: 0 });
  expect(readFileSync(theirs, 'utf8')).toBe('\ufeffNo.;Who;Points\n1;toad-2;100\n2;otter-7;90\n3;crow-3;kept\n');
});

test('goes on from its journal after a run that was broken off', async () => {
  const journal = join(folder.path, 'journal');
  const args = ['markbook', IN, '--assignment', A, '--roster', ROSTER, '--secret', '5', '--json', '--journal', journal];
  const whole = await counterpose(args);
  const lines = readFileSync(journal, 'utf8').trimEnd().split('\n');
  expect(lines).toHaveLength(1 + 6);
  writeFileSync(journal, `${lines.slice(0, 3).join('\n')}\n{"key":"half`);
  const again = await counterpose(args);
  expect(again.stdout).toBe(whole.stdout);
  const forged = lines.map((line) => line.replaceAll('"worth":1', '"worth":0.5'));
  writeFileSync(journal, `${forged.join('\n')}\n`);
  expect((await counterpose(args)).stdout).not.toBe(whole.stdout);
  const other = [...args.slice(0, -2), '--journal', journal].map((one) => (one === '5' ? '6' : one));
  expect(bookOf((await counterpose(other)).stdout).learners).toHaveLength(4);
});

test('what cannot be used is told, with exit status 2', async () => {
  expect(await counterpose(['markbook', IN])).toMatchObject({ status: 2 });
  expect(await counterpose(['markbook', join(folder.path, 'gone'), '--assignment', A])).toMatchObject({ status: 2 });
  const twice = folder.put('twice.csv', 'learner,name\na,A\na,B\n');
  const { status, stderr } = await counterpose(['markbook', IN, '--assignment', A, '--roster', twice]);
  expect({ status, stderr }).toMatchObject({
    status: 2,
    stderr: expect.stringContaining('/2: found "a" a second time'),
  });
  expect(existsSync(join(folder.path, 'never.csv'))).toBe(false);
});

test('runs as a plain process too', () => {
  const text = execFileSync(NODE, [LAUNCHER, 'markbook', IN, '--assignment', A, '--roster', ROSTER], {
    encoding: 'utf8',
  });
  expect(text).toContain('On the quay: 3 of 4 learners handed in');
  expect(text).toContain('broken.json is nobody’s work');
});
