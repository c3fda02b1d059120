import { useState } from 'react';
import type { Book, BookFlag } from '../delivery/book/book.ts';
import { finalOf } from '../delivery/book/final.ts';
import { exercisesOf } from '../delivery/book/marksCsv.ts';
import { FLAGS, percent } from './words.ts';

interface Props {
  book: Book;
  chosen: string | null;
  choose: (learner: string) => void;
}

/** A line a learner: mark, exercises, flags. One flag may be picked out. */
export function BookTable({ book, chosen, choose }: Props) {
  const [only, setOnly] = useState<BookFlag | ''>('');
  const exercises = exercisesOf(book);
  const flags = [...new Set(book.learners.flatMap((one) => one.flags))];
  const shown = book.learners.filter((one) => only === '' || one.flags.includes(only));
  const handedIn = book.learners.filter(({ counted }) => counted !== null).length;
  return (
    <>
      <p>
        {book.assignment.title}: {handedIn} of {book.learners.length} handed in.{' '}
        {flags.length > 0 && (
          <label>
            Show{' '}
            <select value={only} onChange={(event) => setOnly(event.target.value as BookFlag | '')}>
              <option value="">everybody</option>
              {flags.map((flag) => (
                <option key={flag} value={flag}>
                  {FLAGS[flag] ?? flag}
                </option>
              ))}
            </select>
          </label>
        )}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by key */}
      <section className="mb-wide" aria-label="Marks of the class" tabIndex={0}>
        <table className="mb-marks">
          <thead>
            <tr>
              <th scope="col">learner</th>
              <th scope="col">mark</th>
              {exercises.map((id) => (
                <th key={id} scope="col">
                  {id}
                </th>
              ))}
              <th scope="col">to look at</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((one) => {
              const final = finalOf(book, one);
              return (
                <tr key={one.learner} aria-current={one.learner === chosen ? 'true' : undefined}>
                  <th scope="row">
                    <button type="button" onClick={() => choose(one.learner)}>
                      <bdi>{one.name || one.learner}</bdi>
                    </button>
                  </th>
                  <td>
                    {one.counted === null ? 'nothing' : `${percent(final.mark)}${final.passed ? ', passed' : ''}`}
                  </td>
                  {exercises.map((id) => (
                    <td key={id}>{one.counted === null ? '' : percent(final.exercises.get(id) ?? 0)}</td>
                  ))}
                  <td>{one.flags.map((flag) => FLAGS[flag] ?? flag).join('; ')}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </>
  );
}
