import type { Book, BookLearner } from './book.ts';
import { finalOf } from './final.ts';

/** What one learner gets back: one file that opens in the course. */
export interface Feedback {
  format: 'counterpose/feedback';
  version: 1;
  assignment: { id: string; title: string };
  learner: string;
  mark: number;
  passed: boolean;
  receipt: string | null;
  exercises: readonly {
    exercise: string;
    mark: number;
    byHand: boolean;
    seed: number | null;
    /** What was missed, each with its simplest pose. */
    missed: readonly { id: string; measured: number | null; allowed: number; unit: string; counterpose: unknown }[];
  }[];
  says: readonly { exercise: string | null; says: string }[];
}

export function feedbackFor(book: Book, one: BookLearner): Feedback {
  const final = finalOf(book, one);
  const marked = one.counted === null ? null : one.handedIn[one.counted]!.marked;
  const { id, title } = book.assignment;
  const exercises = (marked?.exercises ?? []).map(({ exercise, counted, answers }) => {
    const answer = counted === null ? null : answers[counted]!;
    const graded = answer?.outcome === 'graded' ? answer : null;
    const missed = (graded?.missed ?? []).map(({ id, measured, allowed, unit, counterpose }) => {
      return { id, measured, allowed, unit, counterpose };
    });
    const byHand = final.byHand.includes(exercise);
    return { exercise, mark: final.exercises.get(exercise)!, byHand, seed: graded?.seed ?? null, missed };
  });
  return {
    format: 'counterpose/feedback',
    version: 1,
    assignment: { id, title },
    learner: one.learner,
    mark: final.mark,
    passed: final.passed,
    receipt: marked?.receipt ?? null,
    exercises,
    says: one.notes.flatMap(saysOf),
  };
}

function saysOf(note: BookLearner['notes'][number]): Feedback['says'] {
  if (note.kind === 'comment') return [{ exercise: note.exercise, says: note.says }];
  if (note.kind === 'override') return [{ exercise: note.exercise, says: `Marked by hand: ${note.reason}` }];
  return [{ exercise: null, says: `${note.line}: ${note.mark} of ${note.outOf}. ${note.says}` }];
}
