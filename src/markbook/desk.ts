import type { OpenedAssignment } from '../delivery/assignment/readAssignment.ts';
import type { Book, Note } from '../delivery/book/book.ts';
import type { MarkedFile } from '../delivery/book/markFile.ts';
import type { CollectedFile } from '../delivery/collection/collected.ts';
import type { Roster } from '../delivery/csv/roster.ts';

/** What lies on the instructor's desk. Nothing of it leaves the page but what is saved. */
export interface Desk {
  /** The assignment's file, as the workers read it, and what was read. */
  assignmentText: string;
  opened: OpenedAssignment | null;
  roster: Roster | null;
  files: readonly CollectedFile[];
  /** What is marked so far, by path, so that marking goes on where it was stopped. */
  marked: ReadonlyMap<string, MarkedFile>;
  /** Of the probes that nobody could know beforehand. */
  secretSeed: number;
  book: Book | null;
}

export const emptyDesk = (): Desk => ({
  assignmentText: '',
  opened: null,
  roster: null,
  files: [],
  marked: new Map(),
  secretSeed: crypto.getRandomValues(new Uint32Array(1))[0]!,
  book: null,
});

/** The book with one more note on a learner. */
export function withNote(book: Book, learner: string, note: Note): Book {
  const learners = book.learners.map((one) => {
    return one.learner === learner ? { ...one, notes: [...one.notes, note] } : one;
  });
  return { ...book, learners };
}

/** The new book with the notes of the old one, which no marking makes anew. */
export function withNotesOf(book: Book, old: Book | null): Book {
  const notes = new Map(old?.learners.map((one) => [one.learner, one.notes]));
  const learners = book.learners.map((one) => ({ ...one, notes: notes.get(one.learner) ?? one.notes }));
  return { ...book, learners };
}

export const noteHead = (by: string) => ({
  id: Array.from(crypto.getRandomValues(new Uint8Array(9)), (byte) => byte.toString(16).padStart(2, '0')).join(''),
  at: new Date().toISOString(),
  by,
});
