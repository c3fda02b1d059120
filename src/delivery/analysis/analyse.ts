import type { Book } from '../book/book.ts';
import { exercisesOf } from '../book/marksCsv.ts';
import type { GradedMark } from '../mark/markedAnswer.ts';
import { alphaInterval, correlationInterval, type Interval, proportionInterval } from './intervals.ts';
import { alpha, itemRest, mean } from './reliability.ts';

/** Under so many learners numbers of this kind say little. */
export const FEW_LEARNERS = 100;

export interface Analysis {
  /** Learners who handed something in; others are left out. What they left unanswered counts as 0. */
  learners: number;
  /** Whether to take all of it with caution. */
  isFew: boolean;
  alpha: number | null;
  alphaInterval: Interval | null;
  items: ItemAnalysis[];
}

export interface ItemAnalysis {
  exercise: string;
  /** How many handed in an answer that could be graded. */
  answered: number;
  passed: number;
  /** Mean mark, from 0 to 1; the higher, the easier. */
  difficulty: number | null;
  difficultyInterval: Interval | null;
  /** Correlation with the sum of the other exercises. */
  itemRest: number | null;
  itemRestInterval: Interval | null;
  requirements: Tally[];
  wrongTurns: Tally[];
  counterposes: Tally[];
}

/** Something that learners had in common, and how many of them. Each learner counts once. */
export interface Tally {
  what: string;
  learners: number;
}

const MOST_COMMON = 5;

/** What a class has and has not understood, from the submissions that count. Marks set by hand are not in it. */
export function analyse(book: Book): Analysis {
  const counted = book.learners.flatMap(({ handedIn, counted }) =>
    counted === null ? [] : [handedIn[counted]!.marked],
  );
  const exercises = exercisesOf(book);
  const marks = counted.map(({ exercises: own }) => {
    return exercises.map((id) => own.find(({ exercise }) => exercise === id)?.mark ?? 0);
  });
  const count = counted.length;
  const value = alpha(marks);
  const items = exercises.map((exercise, item): ItemAnalysis => {
    const answers = counted.flatMap(
      ({ exercises: own }) => countedAnswer(own.find((one) => one.exercise === exercise)) ?? [],
    );
    const difficulty = count === 0 ? null : mean(marks.map((row) => row[item]!));
    // Two learners are always on one line.
    const rest = exercises.length < 2 || count < 3 ? null : itemRest(marks, item);
    return {
      exercise,
      answered: answers.length,
      passed: answers.filter(({ passed }) => passed).length,
      difficulty,
      difficultyInterval: difficulty === null ? null : proportionInterval(difficulty, count),
      itemRest: rest,
      itemRestInterval: correlationInterval(rest, count),
      requirements: tallied(answers, ({ missed }) => missed.map(({ id }) => id)),
      wrongTurns: tallied(answers, ({ missed }) => missed.flatMap(({ diagnosis }) => diagnosis ?? [])),
      counterposes: tallied(answers, ({ missed }) => missed.flatMap(({ id, counterpose }) => shown(id, counterpose))),
    };
  });
  return {
    learners: count,
    isFew: count < FEW_LEARNERS,
    alpha: value,
    alphaInterval: alphaInterval(value, exercises.length, count),
    items,
  };
}

type MarkedExercises = Book['learners'][number]['handedIn'][number]['marked']['exercises'];

function countedAnswer(one: MarkedExercises[number] | undefined): GradedMark | null {
  const answer = one && one.counted !== null ? one.answers[one.counted] : undefined;
  return answer?.outcome === 'graded' ? answer : null;
}

const shown = (requirement: string, counterpose: unknown): string[] =>
  counterpose === null ? [] : [`${requirement}: ${JSON.stringify(counterpose)}`];

function tallied(answers: readonly GradedMark[], whatOf: (answer: GradedMark) => readonly string[]): Tally[] {
  const counts = new Map<string, number>();
  for (const answer of answers)
    for (const what of new Set(whatOf(answer))) counts.set(what, (counts.get(what) ?? 0) + 1);
  return [...counts]
    .map(([what, learners]) => ({ what, learners }))
    .sort((a, b) => b.learners - a.learners || (a.what < b.what ? -1 : 1))
    .slice(0, MOST_COMMON);
}
