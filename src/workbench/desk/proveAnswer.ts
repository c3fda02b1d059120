import type { Answer, Exercise } from '../../grader/exercise/definition.ts';
import { grade, type Marking, markingOf, messageOf } from '../../grader/index.ts';
import type { Graded } from '../../grader/result.ts';

export interface Proved {
  readonly result: Graded;
  /** Requirement id to what is said of it. */
  readonly messages: Readonly<Record<string, string>>;
}

let last: Marking | null = null;

/** Grades an answer and puts what was found into words. The exercise's own gates are worked out once. */
export function proveAnswer(exercise: Exercise, answer: Answer): Proved {
  if (!last || !isSame(last.exercise, exercise)) last = markingOf(exercise);
  const result = grade(last, answer);
  const messages = result.requirements.map((requirement) => [requirement.id, messageOf(exercise, requirement)]);
  return { result, messages: Object.fromEntries(messages) };
}

/** A worker gets a copy of the exercise each time: what tells exercises apart is what they are called. */
function isSame(a: Exercise, b: Exercise): boolean {
  return a.id === b.id && a.edition === b.edition && a.seed === b.seed;
}
