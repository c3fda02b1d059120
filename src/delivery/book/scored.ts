import type { Scored } from '../csv/oneRoster.ts';
import type { Book } from './book.ts';
import { finalOf } from './final.ts';
import { percent } from './marksCsv.ts';

/** The marks of a book as a school's system takes them, one a learner. */
export function scoredOf(book: Book): Scored[] {
  return book.learners.map((one) => {
    const { flags, learner, counted, notes } = one;
    const comment = notes.flatMap((note) => (note.kind === 'comment' ? [note.says] : [])).join(' / ');
    const late = flags.includes('late') || flags.includes('too-late');
    return { student: learner, score: counted === null ? null : percent(finalOf(book, one).mark), late, comment };
  });
}
