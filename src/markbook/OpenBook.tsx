import { useState } from 'react';
import type { Book } from '../delivery/book/book.ts';
import { mergeBooks } from '../delivery/book/mergeBooks.ts';
import { readBookText } from '../delivery/book/readBook.ts';
import { saveFile } from '../workbench/keep/saveFile.ts';
import { FileField } from './FileField.tsx';
import { refusalText } from './words.ts';

interface Props {
  book: Book | null;
  setBook: (book: Book) => void;
}

/** The book as one file: saved, opened again, and put together with a colleague's. */
export function OpenBook({ book, setBook }: Props) {
  const [told, setTold] = useState('');

  async function open([file]: File[]) {
    const read = readBookText(await file!.text());
    if (!read.ok) return setTold(`${file!.name} is no mark book. ${refusalText(read.refusal)}`);
    if (!book) {
      setBook(read.value);
      return setTold(`${file!.name} is open.`);
    }
    const merged = mergeBooks(book, read.value);
    if (!merged.ok) return setTold(`${file!.name} cannot be put into this one. ${refusalText(merged.refusal)}`);
    setBook(merged.value);
    setTold(`${file!.name} is put into this one.`);
  }

  return (
    <section aria-labelledby="mb-book">
      <h2 id="mb-book">The book</h2>
      <FileField
        label={book ? 'Put another book into this one' : 'Or open a book that was saved'}
        accept=".json"
        take={open}
      />
      {book && (
        <p>
          <button type="button" onClick={() => saveFile(`marks-${book.assignment.id}.json`, book)}>
            Save the book
          </button>
        </p>
      )}
      <p role="status">{told}</p>
    </section>
  );
}
