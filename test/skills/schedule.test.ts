import { default_w } from 'ts-fsrs';
import { expect, test } from 'vitest';
import { type Review, scheduleOf } from '../../src/skills/schedule.ts';

const DAY_MS = 86_400_000;
const START = Date.UTC(2022, 11, 29, 12, 30);

type Went = Review['went'];

/** Reviews so many days after one another. */
function reviewsAfter(days: readonly number[], went: readonly Went[]): [Review, ...Review[]] {
  let when = START;
  const reviews = days.map((wait, i) => {
    when += wait * DAY_MS;
    return { when, went: went[i]! };
  });
  return reviews as [Review, ...Review[]];
}

/** The days from each review to the next, where each is made on its day. */
function waitsOf(went: readonly Went[]): number[] {
  const reviews: Review[] = [];
  let when = START;
  return went.map((each) => {
    reviews.push({ when, went: each });
    const { due } = scheduleOf(reviews as [Review, ...Review[]]);
    const wait = (due - when) / DAY_MS;
    when = due;
    return wait;
  });
}

test('the numbers are those the formula is published with', () => {
  // open-spaced-repetition/ts-fsrs, __tests__/FSRS-6.test.ts, and the table "FSRS-6" of The-Algorithm, wiki of fsrs4anki.
  expect(default_w).toEqual([
    0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629, 1.6483,
    0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
  ]);
});

test('failed once, then right five times, comes to the published state', () => {
  // open-spaced-repetition/ts-fsrs, __tests__/FSRS-6.test.ts, "memory state[long-term]", which follows fsrs-rs.
  const went: Went[] = ['failed', ...Array<Went>(5).fill('unaided')];
  const { stabilityDays, difficulty } = scheduleOf(reviewsAfter([0, 0, 1, 3, 8, 21], went));
  expect(stabilityDays).toBeCloseTo(53.335106, 4);
  expect(difficulty).toBeCloseTo(6.3574867, 4);
});

test.each([
  // The same file, "first repeat": stability and difficulty after one review.
  ['failed', 0.212, 6.4133],
  ['aided', 1.2931, 5.11217071],
  ['unaided', 2.3065, 2.11810397],
] as const)('a first review that went %s', (went, stabilityDays, difficulty) => {
  const schedule = scheduleOf([{ when: START, went }]);
  expect(schedule.stabilityDays).toBeCloseTo(stabilityDays, 8);
  expect(schedule.difficulty).toBeCloseTo(difficulty, 8);
});

test.each<[Went[]]>([
  [['unaided', 'unaided', 'unaided', 'unaided', 'unaided', 'unaided']],
  [['unaided', 'unaided', 'failed', 'unaided', 'aided', 'unaided']],
  [['unaided', 'aided', 'aided', 'failed', 'failed', 'unaided']],
])('the days of %s are those of the formula', (went) => {
  expect(waitsOf(went)).toEqual(daysByFormula(went));
});

test('the same reviews give the same date', () => {
  const reviews = reviewsAfter([0, 2, 9, 40], Array<Went>(4).fill('unaided'));
  expect(new Set(Array.from({ length: 20 }, () => scheduleOf(reviews).due)).size).toBe(1);
});

interface Memory {
  stability: number;
  difficulty: number;
}
const GRADES = { failed: 1, aided: 2, unaided: 3 } as const;
const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));

/**
 * A second, plain reading of FSRS-6 in whole days, from its formulas: open-spaced-repetition/fsrs4anki, wiki,
 * The-Algorithm. From the library's own text comes only that a better answer waits at least a day longer than a worse one.
 */
function daysByFormula(went: readonly Went[]): number[] {
  let memory: Memory | null = null;
  let days = 0;
  return went.map((each) => {
    const [failed, aided, unaided] = [1, 2, 3].map((grade) => memoryAfter(memory, days, grade));
    const days1 = Math.min(wholeDays(failed!), wholeDays(aided!));
    const days2 = Math.max(wholeDays(aided!), days1 + 1);
    const days3 = Math.max(wholeDays(unaided!), days2 + 1);
    memory = memoryAfter(memory, days, GRADES[each]);
    days = { failed: days1, aided: days2, unaided: days3 }[each];
    return days;
  });
}

const wholeDays = ({ stability }: Memory) => Math.max(1, Math.round(stability));

function memoryAfter(before: Memory | null, days: number, grade: number): Memory {
  const w = default_w as number[];
  const firstDifficulty = (g: number) => w[4]! - Math.exp(w[5]! * (g - 1)) + 1;
  if (!before) return { stability: w[grade - 1]!, difficulty: within(firstDifficulty(grade), 1, 10) };
  const { stability: s, difficulty: d } = before;
  const factor = 0.9 ** (-1 / w[20]!) - 1;
  const recall = (1 + (factor * days) / s) ** -w[20]!;
  const hard = grade === 2 ? w[15]! : 1;
  const gain = Math.exp(w[8]!) * (11 - d) * s ** -w[9]! * (Math.exp(w[10]! * (1 - recall)) - 1) * hard;
  const forgotten = w[11]! * d ** -w[12]! * ((s + 1) ** w[13]! - 1) * Math.exp(w[14]! * (1 - recall));
  const damped = d - (w[6]! * (grade - 3) * (10 - d)) / 9;
  return {
    stability: grade === 1 ? Math.min(forgotten, s) : s * (1 + gain),
    difficulty: within(w[7]! * firstDifficulty(4) + (1 - w[7]!) * damped, 1, 10),
  };
}
