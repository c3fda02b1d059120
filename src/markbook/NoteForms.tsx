import { type FormEvent, useState } from 'react';
import type { Note } from '../delivery/book/book.ts';
import { noteHead } from './desk.ts';

interface Props {
  exercises: readonly string[];
  by: string;
  setBy: (by: string) => void;
  write: (note: Note) => void;
}

/** A comment, a mark by hand with its reason, or a line that no program can judge. */
export function NoteForms({ exercises, by, setBy, write }: Props) {
  const [kind, setKind] = useState<Note['kind']>('comment');

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const form = event.currentTarget;
    const given = new FormData(form);
    const text = (name: string) => String(given.get(name) ?? '').trim();
    const number = (name: string) => Number(given.get(name));
    const head = noteHead(by);
    if (kind === 'comment') write({ ...head, kind, exercise: text('exercise') || null, says: text('says') });
    if (kind === 'override') {
      write({ ...head, kind, exercise: text('exercise'), mark: number('mark') / 100, reason: text('says') });
    }
    if (kind === 'rubric') {
      write({ ...head, kind, line: text('line'), mark: number('mark'), outOf: number('outOf'), says: text('says') });
    }
    form.reset();
  }

  return (
    <form className="mb-note" onSubmit={submit}>
      <p>
        <label>
          Write{' '}
          <select value={kind} onChange={(event) => setKind(event.target.value as Note['kind'])}>
            <option value="comment">a comment</option>
            <option value="override">a mark by hand</option>
            <option value="rubric">a line of a rubric</option>
          </select>
        </label>{' '}
        <label>
          Your name <input value={by} onChange={(event) => setBy(event.target.value)} required />
        </label>
      </p>
      <p>
        {kind !== 'rubric' && (
          <label>
            On{' '}
            <select name="exercise">
              {kind === 'comment' && <option value="">all of it</option>}
              {exercises.map((id) => (
                <option key={id}>{id}</option>
              ))}
            </select>
          </label>
        )}
        {kind === 'rubric' && (
          <label>
            What is judged <input name="line" required />
          </label>
        )}{' '}
        {kind !== 'comment' && (
          <label>
            {kind === 'override' ? 'Mark in per cent' : 'Points'}{' '}
            <input name="mark" type="number" min="0" max={kind === 'override' ? 100 : undefined} step="any" required />
          </label>
        )}{' '}
        {kind === 'rubric' && (
          <label>
            out of <input name="outOf" type="number" min="0.5" step="any" defaultValue="10" required />
          </label>
        )}
      </p>
      <p>
        <label>
          {kind === 'override' ? 'Reason' : 'Text'} <textarea name="says" rows={2} required={kind !== 'rubric'} />
        </label>
      </p>
      <p>
        <button type="submit">Write it into the book</button>
      </p>
    </form>
  );
}
