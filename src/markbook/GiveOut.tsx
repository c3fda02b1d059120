import { strToU8, zipSync } from 'fflate';
import { type FormEvent, useState } from 'react';
import type { Assignment } from '../delivery/assignment/assignment.ts';
import type { Book } from '../delivery/book/book.ts';
import { feedbackFor } from '../delivery/book/feedback.ts';
import { finalOf } from '../delivery/book/final.ts';
import { marksCsv, percent } from '../delivery/book/marksCsv.ts';
import { scoredOf } from '../delivery/book/scored.ts';
import { fillIn } from '../delivery/csv/fillIn.ts';
import { oneRosterFiles } from '../delivery/csv/oneRoster.ts';
import { saveContent } from '../workbench/keep/saveFile.ts';
import { FileField } from './FileField.tsx';
import { refusalText } from './words.ts';

interface Props {
  book: Book;
  /** Null where only a book was opened. */
  assignment: Assignment | null;
}

/** The marks as files: CSV, into the instructor's own table, feedback for each learner, OneRoster. */
export function GiveOut({ book, assignment }: Props) {
  const { id } = book.assignment;
  return (
    <>
      <p>
        <button type="button" onClick={() => saveContent(`marks-${id}.csv`, marksCsv(book), 'text/csv')}>
          Save the marks as CSV
        </button>{' '}
        <button type="button" onClick={() => saveContent(`feedback-${id}.zip`, feedbackZip(book), 'application/zip')}>
          Save feedback, a file for each learner
        </button>
      </p>
      <FillIn book={book} />
      <OneRoster book={book} assignment={assignment} />
    </>
  );
}

function feedbackZip(book: Book): Uint8Array<ArrayBuffer> {
  const files = book.learners.map((one, i) => {
    const name = `${i + 1}-${one.learner.replace(/[^A-Za-z0-9_-]/g, '_')}.json`;
    return [name, strToU8(JSON.stringify(feedbackFor(book, one), null, 2))];
  });
  return zipSync(Object.fromEntries(files)) as Uint8Array<ArrayBuffer>;
}

function FillIn({ book }: { book: Book }) {
  const [learner, setLearner] = useState('learner');
  const [mark, setMark] = useState('mark');
  const [told, setTold] = useState('');

  async function fill([file]: File[]) {
    const marks = new Map(book.learners.map((one) => [one.learner, String(percent(finalOf(book, one).mark))]));
    const filled = fillIn(await file!.text(), { learner, mark }, marks);
    if (!filled.ok) return setTold(refusalText(filled.refusal));
    const { csv, filled: count, withoutMark, notInFile } = filled.value;
    saveContent(file!.name, csv, 'text/csv');
    const missing = withoutMark.length > 0 ? ` Without a mark: ${withoutMark.join(', ')}.` : '';
    const unlisted = notInFile.length > 0 ? ` Not in the table: ${notInFile.join(', ')}.` : '';
    setTold(`${count} marks filled in.${missing}${unlisted}`);
  }

  return (
    <details>
      <summary>Fill the marks into a table of your own</summary>
      <p>
        <label>
          Column with the learners’ codes <input value={learner} onChange={({ target }) => setLearner(target.value)} />
        </label>{' '}
        <label>
          Column for the mark <input value={mark} onChange={({ target }) => setMark(target.value)} />
        </label>
      </p>
      <FileField label="Your table, CSV" accept=".csv,.txt" take={fill} />
      <p role="status">{told}</p>
    </details>
  );
}

function OneRoster({ book, assignment }: Props) {
  if (!assignment) return null;

  function write(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const given = new FormData(event.currentTarget);
    const text = (name: string) => String(given.get(name)).trim();
    const ids = { school: text('school'), classOf: text('class'), session: text('period') };
    const files = oneRosterFiles(assignment!, ids, scoredOf(book), new Date().toISOString());
    const bytes = Object.fromEntries(Object.entries(files).map(([name, content]) => [name, strToU8(content)]));
    saveContent(`oneroster-${book.assignment.id}.zip`, zipSync(bytes) as Uint8Array<ArrayBuffer>, 'application/zip');
  }

  return (
    <details>
      <summary>OneRoster 1.2, for a school’s own system</summary>
      <form onSubmit={write}>
        <p className="small">
          A delta: it adds to what the system has. The learners’ codes must be the ids by which it knows its students.
        </p>
        <p>
          <label>
            School’s id <input name="school" required />
          </label>{' '}
          <label>
            Class’s id <input name="class" required />
          </label>{' '}
          <label>
            Period’s id <input name="period" required />
          </label>{' '}
          <button type="submit">Save</button>
        </p>
      </form>
    </details>
  );
}
