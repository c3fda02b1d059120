import { writeOwn } from '../csv/table.ts';
import type { Book, BookLearner } from './book.ts';
import { finalOf } from './final.ts';

/** A share as a percentage with at most two digits after the point. */
export const percent = (share: number): number => Math.round(share * 10_000) / 100;

/** The marks as CSV: a line a learner, in per cent, an exercise a column, flags and what people wrote at the end. */
export function marksCsv(book: Book): string {
  const exercises = exercisesOf(book);
  const head = [
    ...['learner', 'name', 'mark', 'passed', 'before_late', 'days_late'],
    ...exercises,
    ...['flags', 'comments', 'file', 'collected', 'receipt'],
  ];
  return writeOwn(
    head,
    book.learners.map((one) => lineOf(book, one, exercises)),
  );
}

/** The ids of all exercises that were marked, in the order of the assignment. */
export function exercisesOf({ learners }: Book): string[] {
  const marked = learners.flatMap(({ handedIn }) => handedIn.flatMap(({ marked }) => marked.exercises));
  return [...new Set(marked.map(({ exercise }) => exercise))];
}

function lineOf(book: Book, one: BookLearner, exercises: readonly string[]): (string | number)[] {
  const final = finalOf(book, one);
  const handedIn = one.counted === null ? null : one.handedIn[one.counted]!;
  const comments = one.notes.flatMap((note) => (note.kind === 'comment' ? [note.says] : []));
  return [
    one.learner,
    one.name ?? '',
    percent(final.mark),
    final.passed ? 'yes' : 'no',
    percent(final.worth),
    handedIn?.marked.late.days ?? '',
    ...exercises.map((id) => percent(final.exercises.get(id) ?? 0)),
    one.flags.join(' '),
    comments.join(' / '),
    handedIn?.path ?? '',
    handedIn?.collected ?? '',
    handedIn?.marked.receipt ?? '',
  ];
}
