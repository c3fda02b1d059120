import './markbook.css';
import { useState } from 'react';
import type { Book } from '../delivery/book/book.ts';
import { AnalysisSheet } from './AnalysisSheet.tsx';
import { BookTable } from './BookTable.tsx';
import { type Desk, emptyDesk, withNote } from './desk.ts';
import { GiveOut } from './GiveOut.tsx';
import { LearnerSheet } from './LearnerSheet.tsx';
import { Marking } from './Marking.tsx';
import { OpenBook } from './OpenBook.tsx';
import { Strays } from './Strays.tsx';

/** The mark book: what a class handed in, marked again here, looked at, written on, and given out. */
export function MarkBook() {
  const [desk, setDesk] = useState<Desk>(emptyDesk);
  const [chosen, setChosen] = useState<string | null>(null);
  const [by, setBy] = useState('');
  const { book, opened } = desk;
  const setBook = (next: Book) => setDesk((now) => ({ ...now, book: next }));
  const learner = book?.learners.find((one) => one.learner === chosen) ?? null;

  return (
    <div className="mb">
      <Marking desk={desk} setDesk={setDesk} />
      <OpenBook book={book} setBook={setBook} />
      {book && (
        <>
          <h2>Marks</h2>
          <BookTable book={book} chosen={chosen} choose={setChosen} />
          {learner && (
            <LearnerSheet
              key={learner.learner}
              book={book}
              learner={learner}
              desk={desk}
              by={by}
              setBy={setBy}
              write={(note) => setBook(withNote(book, learner.learner, note))}
            />
          )}
          <Strays book={book} />
          <h2>What the class has understood</h2>
          <AnalysisSheet book={book} />
          <h2>Give out</h2>
          <GiveOut book={book} assignment={opened?.assignment ?? null} />
        </>
      )}
    </div>
  );
}
