import type { Book, BookLearner, Note } from './book.ts';

/** What a learner gets in the end: the marks that were proved, with those set by hand in their place. */
export interface Final {
  mark: number;
  /** Before anything was taken for being late. */
  worth: number;
  passed: boolean;
  /** Share of each exercise, by id. */
  exercises: ReadonlyMap<string, number>;
  /** Exercises whose mark a person set. */
  byHand: readonly string[];
}

const NOTHING: Final = { mark: 0, worth: 0, passed: false, exercises: new Map(), byHand: [] };

/**
 * The last mark set by hand for an exercise stands in place of what was proved. Rubric lines count together as one more
 * exercise, of the mean weight of the others, where there are any.
 */
export function finalOf({ assignment }: Book, { handedIn, counted, notes }: BookLearner): Final {
  if (counted === null) return NOTHING;
  const { marked } = handedIn[counted]!;
  const overrides = lastOverrides(notes);
  const exercises = new Map(marked.exercises.map(({ exercise, mark }) => [exercise, overrides.get(exercise) ?? mark]));
  const weights = marked.exercises.map(({ weight }) => weight);
  const proved = marked.exercises.reduce((sum, { exercise, weight }) => sum + weight * exercises.get(exercise)!, 0);
  const rubric = rubricShare(notes);
  const own = weights.reduce((sum, weight) => sum + weight, 0);
  const extra = rubric === null ? 0 : own / weights.length;
  const worth = (proved + extra * (rubric ?? 0)) / (own + extra);
  const mark = Math.max(0, worth - marked.late.taken);
  return { mark, worth, passed: mark >= assignment.passMark, exercises, byHand: [...overrides.keys()] };
}

const byTime = (a: Note, b: Note): number => (a.at < b.at ? -1 : 1);

function lastOverrides(notes: readonly Note[]): Map<string, number> {
  const overrides = [...notes].sort(byTime).flatMap((note) => (note.kind === 'override' ? [note] : []));
  return new Map(overrides.map(({ exercise, mark }) => [exercise, mark]));
}

function rubricShare(notes: readonly Note[]): number | null {
  const lines = new Map<string, { mark: number; outOf: number }>();
  for (const note of [...notes].sort(byTime)) if (note.kind === 'rubric') lines.set(note.line, note);
  const outOf = [...lines.values()].reduce((sum, line) => sum + line.outOf, 0);
  return outOf === 0 ? null : [...lines.values()].reduce((sum, line) => sum + line.mark, 0) / outOf;
}
