import { expect, test } from 'vitest';
import { makeBook } from '../../../src/delivery/book/makeBook.ts';
import { FileMarker } from '../../../src/delivery/book/markFile.ts';
import { marksCsv } from '../../../src/delivery/book/marksCsv.ts';
import { collect } from '../../../src/delivery/collection/collect.ts';
import { readTable } from '../../../src/delivery/csv/table.ts';
import { answerOf, assignmentOf } from '../support.ts';

const assignment = assignmentOf();
const opened = { assignment, signedBy: null };
const submission = (learner: string, answers: unknown[] = [], more = {}) =>
  JSON.stringify({
    format: 'counterpose/submission',
    version: 1,
    assignment: assignment.id,
    learner,
    answers,
    ...more,
  });

async function bookOf(texts: Record<string, string>) {
  const marker = new FileMarker(opened);
  const files = Object.entries(texts).map(([path, text]) => ({
    path,
    collected: null,
    read: async () => new TextEncoder().encode(text),
  }));
  const marked = [];
  for await (const one of collect(files)) marked.push(marker.mark(one));
  return makeBook(opened, null, marked);
}

test('of a thousand files ten are broken: each of these is told, and stops nothing', async () => {
  const broken = [
    '',
    '{',
    '[]',
    'null',
    '{"format":"counterpose/submission"}',
    '{"a":'.repeat(3000),
    '{"a":1,"a":2}',
    '\u0000{}',
  ];
  broken.push(submission('a\nb'), submission('x', [], { mark: 1 }));
  const texts = Object.fromEntries(
    Array.from({ length: 1000 }, (_, n) => [
      `${String(n).padStart(4, '0')}.json`,
      n % 100 === 50 ? broken[Math.floor(n / 100)]! : submission(`player-${n}`),
    ]),
  );
  const book = await bookOf(texts);
  expect(book.learners).toHaveLength(990);
  expect(book.strays).toHaveLength(10);
  for (const { path, refusal } of book.strays) {
    expect(path).toMatch(/50\.json$/);
    expect(`${refusal.found} ${refusal.expected}`).not.toMatch(/undefined|\[object/);
  }
});

test('codes with formulas, markup and marks that turn the writing round stay texts', async () => {
  const codes = [
    '=HYPERLINK("http://x")',
    '<img src=x onerror=alert(1)>',
    '\u202egnp.exe',
    "'; DROP TABLE",
    '__proto__',
    'constructor',
  ];
  const book = await bookOf(Object.fromEntries(codes.map((code, i) => [`${i}.json`, submission(code)])));
  expect(book.learners.map(({ learner }) => learner).sort()).toEqual([...codes].sort());
  const { rows } = readTable(marksCsv(book));
  expect(rows).toHaveLength(codes.length);
  expect(rows.every(([learner]) => !/^[=+\-@]/.test(learner!))).toBe(true);
  expect(Object.getOwnPropertyNames(Object.prototype)).not.toContain('learner');
});

test('forged marks, another’s answer, and a chain that was edited are flagged, and earn nothing by it', async () => {
  const wrong = answerOf(assignment, 'toad-2', 'one-vane', { wrong: true });
  const step = { at: 'then', exercise: 'one-vane', answer: '0'.repeat(64), before: 'f'.repeat(64) };
  const book = await bookOf({
    'toad.json': submission('toad-2', [{ ...wrong, passed: true }, wrong], { chain: [step] }),
    'heron.json': submission('heron-1', [answerOf(assignment, 'otter-7', 'one-vane')]),
  });
  const [heron, toad] = book.learners;
  expect(toad!.flags).toEqual(expect.arrayContaining(['unusable-answer', 'chain-broken']));
  expect(toad!.handedIn[0]!.marked.mark).toBeLessThan(1);
  expect(heron!.flags).toEqual(expect.arrayContaining(['other-variant', 'names-another-learner']));
});
