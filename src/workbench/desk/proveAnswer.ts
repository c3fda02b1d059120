import type { Answer } from '../../grader/exercise/answer.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import { grade, type Marking, markingOf, messageOf } from '../../grader/index.ts';
import type { Graded } from '../../grader/result.ts';

export interface Proved {
  readonly result: Graded;
  /** Requirement id to what is said of it. */
  readonly messages: Readonly<Record<string, string>>;
}

/** More exercises than a page holds. */
const MOST_KEPT = 12;
const markings = new Map<string, Marking>();

/** Grades an answer and puts what was found into words. The exercise's own gates are worked out once. */
export function proveAnswer(exercise: Exercise, answer: Answer): Proved {
  const result = grade(markingFor(exercise), answer);
  const messages = result.requirements.map((requirement) => [requirement.id, messageOf(exercise, requirement)]);
  return { result, messages: Object.fromEntries(messages) };
}

/** Above so many wrong turns times requirements it would take seconds, in which a file could not be opened. */
const MOST_MADE_READY = 600;

/** Works out beforehand what every proof of the exercise needs, wrong turns and all, where that is soon done. */
export function makeReady(exercise: Exercise): void {
  const { wrongTurns, requirements } = exercise;
  if (wrongTurns.length * requirements.length <= MOST_MADE_READY) markingFor(exercise).wrongs();
}

/** A worker gets a copy of the exercise each time: what tells exercises apart is what they are called. */
function markingFor(exercise: Exercise): Marking {
  const key = JSON.stringify([exercise.id, exercise.edition, exercise.seed]);
  const marking = markings.get(key) ?? markingOf(exercise);
  markings.delete(key);
  markings.set(key, marking);
  if (markings.size > MOST_KEPT) markings.delete(markings.keys().next().value!);
  return marking;
}
