import { reading, refuse } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { quoted } from '../../solver/document/words.ts';
import type { Book, BookLearner, Note } from './book.ts';

/**
 * One book from two of the same assignment, as when two people share the marking: all notes of both, each once, and for
 * a learner whom only one has, that one's. What was proved is the same in both wherever the files are.
 */
export const mergeBooks = (a: Book, b: Book): Reading<Book> =>
  reading(() => {
    if (a.assignment.id !== b.assignment.id) {
      refuse(`a book of ${quoted(b.assignment.id)}`, `one of ${quoted(a.assignment.id)}`, ['assignment', 'id']);
    }
    const others = new Map(b.learners.map((one) => [one.learner, one]));
    const own = a.learners.map((one) => merged(one, others.get(one.learner)));
    const known = new Set(a.learners.map(({ learner }) => learner));
    const strays = new Map([...a.strays, ...b.strays].map((one) => [one.path, one]));
    return {
      ...a,
      learners: [...own, ...b.learners.filter(({ learner }) => !known.has(learner))],
      strays: [...strays.values()],
    };
  });

function merged(own: BookLearner, other: BookLearner | undefined): BookLearner {
  if (!other) return own;
  const base = own.counted === null && other.counted !== null ? other : own;
  return { ...base, name: own.name ?? other.name, notes: notesOf(own, other) };
}

function notesOf(...books: BookLearner[]): Note[] {
  const notes = new Map(books.flatMap(({ notes }) => notes).map((note) => [note.id, note]));
  return [...notes.values()].sort((a, b) => (a.at === b.at ? (a.id < b.id ? -1 : 1) : a.at < b.at ? -1 : 1));
}
