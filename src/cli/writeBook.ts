import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { analyse } from '../delivery/analysis/analyse.ts';
import type { Assignment } from '../delivery/assignment/assignment.ts';
import type { Book } from '../delivery/book/book.ts';
import { feedbackFor } from '../delivery/book/feedback.ts';
import { finalOf } from '../delivery/book/final.ts';
import { marksCsv, percent } from '../delivery/book/marksCsv.ts';
import { scoredOf } from '../delivery/book/scored.ts';
import { fillIn } from '../delivery/csv/fillIn.ts';
import { oneRosterFiles } from '../delivery/csv/oneRoster.ts';
import { accept } from './refusal.ts';

/** The options of the mark book that ask for files, each with a path. */
export interface BookFiles {
  out?: string | undefined;
  book?: string | undefined;
  feedback?: string | undefined;
  items?: string | undefined;
  fill?: string | undefined;
  /** LEARNER,MARK: columns of the file to be filled. */
  columns?: string | undefined;
  'one-roster'?: string | undefined;
  /** SCHOOL,CLASS,PERIOD: ids of the school's system. */
  school?: string | undefined;
}

/** Writes every file that is asked for. */
export function writeBook(book: Book, assignment: Assignment, files: BookFiles): void {
  const { out, book: whole, feedback, fill, columns, items, 'one-roster': oneRoster, school } = files;
  if (out !== undefined) writeFileSync(out, marksCsv(book));
  if (whole !== undefined) writeFileSync(whole, `${JSON.stringify(book)}\n`);
  if (feedback !== undefined) writeFeedback(book, feedback);
  if (items !== undefined) writeFileSync(items, `${JSON.stringify(analyse(book), null, 2)}\n`);
  if (fill !== undefined && columns !== undefined) fillFile(book, fill, columns);
  if (oneRoster !== undefined && school !== undefined) writeOneRoster(book, assignment, oneRoster, school);
}

/** Named by number, since codes may hold what no file name may. */
function writeFeedback(book: Book, folder: string): void {
  mkdirSync(folder, { recursive: true });
  book.learners.forEach((one, i) => {
    const safe = one.learner.replace(/[^A-Za-z0-9_-]/g, '_');
    writeFileSync(join(folder, `${i + 1}-${safe}.json`), `${JSON.stringify(feedbackFor(book, one), null, 2)}\n`);
  });
}

function writeOneRoster(book: Book, assignment: Assignment, folder: string, ids: string): void {
  const [school, classOf, session] = ids.split(',') as [string, string, string];
  const scored = scoredOf(book);
  const files = oneRosterFiles(assignment, { school, classOf, session }, scored, new Date().toISOString());
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
}

function fillFile(book: Book, path: string, columns: string): void {
  const [learner, mark] = columns.split(',') as [string, string];
  const marks = new Map(book.learners.map((one) => [one.learner, String(percent(finalOf(book, one).mark))]));
  const filled = accept(path, fillIn(readFileSync(path, 'utf8'), { learner, mark }, marks));
  writeFileSync(path, filled.csv);
}
