import { randomInt } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Book } from '../../delivery/book/book.ts';
import { finalOf } from '../../delivery/book/final.ts';
import { makeBook } from '../../delivery/book/makeBook.ts';
import { readRoster } from '../../delivery/csv/roster.ts';
import { readArguments } from '../arguments.ts';
import { readAssignmentFile } from '../assignments.ts';
import { collectionAt } from '../collectionFiles.ts';
import { Journal } from '../journal.ts';
import { markAll } from '../markAll.ts';
import { print } from '../output.ts';
import { accept, printable, UsageError } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';
import { writeBook } from '../writeBook.ts';

const OPTIONS = {
  assignment: { type: 'string' },
  roster: { type: 'string' },
  out: { type: 'string' },
  book: { type: 'string' },
  feedback: { type: 'string' },
  fill: { type: 'string' },
  columns: { type: 'string' },
  items: { type: 'string' },
  'one-roster': { type: 'string' },
  school: { type: 'string' },
  best: { type: 'boolean' },
  secret: { type: 'string' },
  journal: { type: 'string' },
  json: { type: 'boolean' },
} as const;

const SEED_LIMIT = 2 ** 47;

/** Marks everything a class handed in. One bad file never stops the rest. */
export const markbookVerb: Verb = {
  help: `
Usage: counterpose markbook FOLDER|ZIP --assignment A.json [--roster R.csv] [--out marks.csv] [--json]

Proves every answer again and puts the marks into a book, with flags for what an instructor should look at.

  --assignment A.json  what was set
  --roster R.csv       who is in the class: at least the columns learner and name
  --out marks.csv      write the marks as CSV
  --book BOOK.json     write the whole book, to be opened on the page
  --feedback DIR       write a file for each learner, which opens in the course
  --fill THEIRS.csv --columns LEARNER,MARK
                       write marks, in per cent, into the column MARK of a table of your own, found by LEARNER
  --items ITEMS.json   write how hard each exercise was, how it goes with the rest, and the commonest wrong turns
  --one-roster DIR --school SCHOOL,CLASS,PERIOD
                       write the marks as OneRoster 1.2 CSV, as a delta, under the ids your school's system has
  --best               of several submissions the best counts, not the last
  --secret N           the seed of probes that nobody could know beforehand; drawn at random where it is not given.
                       They flag, and change no mark
  --journal FILE       keep what is marked in this file, and go on from there after a run that was broken off
  --json               the book on standard output
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [path] = positionals;
    if (path === undefined || positionals.length > 1) throw new UsageError('one folder or zip is expected');
    if (values.assignment === undefined) throw new UsageError('--assignment is expected');
    if (values.fill !== undefined && values.columns?.split(',').length !== 2) {
      throw new UsageError('--fill expects --columns LEARNER,MARK');
    }
    if (values['one-roster'] !== undefined && values.school?.split(',').length !== 3) {
      throw new UsageError('--one-roster expects --school SCHOOL,CLASS,PERIOD');
    }
    const opened = readAssignmentFile(values.assignment);
    const roster =
      values.roster === undefined ? null : accept(values.roster, readRoster(readFileSync(values.roster, 'utf8')));
    const secretSeed = secretOf(values.secret);
    const marking = { assignment: values.assignment, secretSeed };
    const journal = values.journal === undefined ? null : new Journal(values.journal, { ...opened, secretSeed });
    const files = await markAll(collectionAt(path), marking, journal);
    const book = makeBook(opened, roster, files, values.best ? 'best' : 'last');
    writeBook(book, opened.assignment, values);
    await print(values.json ? `${JSON.stringify(book)}\n` : summaryOf(book));
    return 0;
  },
};

function secretOf(given: string | undefined): number {
  if (given === undefined) return randomInt(SEED_LIMIT);
  const seed = Number(given);
  if (Number.isSafeInteger(seed) && seed >= 0) return seed;
  throw new UsageError(`--secret expects a whole number, not ${given}`);
}

function summaryOf(book: Book): string {
  const handedIn = book.learners.filter(({ counted }) => counted !== null);
  const passed = handedIn.filter((one) => finalOf(book, one).passed);
  const flagged = book.learners.filter(({ flags }) => flags.length > 0);
  const lines = [
    `${book.assignment.title}: ${handedIn.length} of ${book.learners.length} learners handed in, ${passed.length} passed`,
    ...flagged.map(({ learner, flags }) => `  ${learner}: ${flags.join(', ')}`),
    ...book.strays.map(({ path, refusal }) => `  ${path} is nobody’s work: found ${refusal.found}`),
  ];
  return `${lines.map(printable).join('\n')}\n`;
}
