import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/skills/attempt.ts';
import { type Row, sheetOf } from '../../src/skills/sheet.ts';
import { standingWords } from '../../src/skills/words.ts';
import { attempt, COURSE, FAILED, noon } from './support/course.ts';

const sheet = (attempts: Attempt[], now = noon(0)) => sheetOf(COURSE, attempts, now);
const rowOf = (attempts: Attempt[], skill: string, now = noon(0)): Row =>
  sheet(attempts, now).rows.find((row) => row.skill.id === skill)!;
const passed = (id: string, seeds: number[]) => seeds.map((seed) => attempt(id, seed));

test('a skill that only this site has gets a row after the others', () => {
  const lid = { id: 'bellows-lid', name: 'Open a lid by its bellows', lesson: '7.1' };
  const exercise = { ...COURSE.exercises[0]!, id: 'lid', lesson: '7.1', skills: [lid.id] };
  const course = { ...COURSE, exercises: [...COURSE.exercises, exercise], skills: [...COURSE.skills, lid] };
  expect(sheetOf(course, [], noon(0)).rows.at(-1)).toMatchObject({ skill: lid, offer: { exercise: 'lid' } });
});

test('every skill with an exercise has a row, in the order of the course', () => {
  const ids = sheet([]).rows.map(({ skill }) => skill.id);
  expect(ids).toEqual(['shortest-turn', 'in-line-at-rest', 'pivot-in-the-middle', 'diagnose']);
});

describe('what comes next', () => {
  test('is the first lesson whose skills are not all known', () => {
    expect(sheet([]).next).toMatchObject({ lesson: { number: '3.1' }, rows: [{ skill: { id: 'shortest-turn' } }] });
    const known = passed('one-vane', [0, 1, 2]);
    const { next } = sheet(known);
    expect(next?.lesson.number).toBe('3.2');
    expect(next?.rows.map(({ skill }) => skill.id)).toEqual(['in-line-at-rest', 'pivot-in-the-middle']);
    const all = [...known, ...passed('flinch', [0, 1, 2]), ...passed('ball-in-its-socket', [0, 1, 2])];
    expect(sheet(all).next).toBeNull();
  });
});

describe('what is offered', () => {
  const offered = (attempts: Attempt[], skill = 'shortest-turn') => {
    const { exercise, seed } = rowOf(attempts, skill).offer;
    return [exercise, seed];
  };

  test('to learn: the exercise passed the least, in the first variant not passed', () => {
    expect(offered([])).toEqual(['one-vane', 0]);
    expect(offered(passed('one-vane', [0]))).toEqual(['many-vanes', 0]);
    expect(offered([...passed('one-vane', [0]), ...passed('many-vanes', [0])])).toEqual(['one-vane', 1]);
  });

  test('what was begun and not passed comes back', () => {
    expect(offered([attempt('one-vane', 0, FAILED)])).toEqual(['one-vane', 0]);
  });

  test('to review: something small that has never been tried', () => {
    expect(offered([...passed('one-vane', [0, 1, 2]), attempt('one-vane', 3, FAILED)])).toEqual(['one-vane', 4]);
  });

  test('to review: the smallest there is, where none is small', () => {
    expect(offered(passed('ball-in-its-socket', [0, 1, 2]), 'pivot-in-the-middle')).toEqual(['ball-in-its-socket', 3]);
  });
});

describe('help', () => {
  const fails = (count: number, id = 'one-vane') => Array.from({ length: count }, () => attempt(id, 0, FAILED));

  test('is offered after ten tries without mastery, not before and not after it', () => {
    expect(rowOf(fails(9), 'shortest-turn').help).toBeNull();
    expect(rowOf(fails(10), 'shortest-turn').help?.number).toBe('3.1');
    expect(rowOf([...fails(10), ...passed('one-vane', [0, 1, 2])], 'shortest-turn').help).toBeNull();
  });

  test('for a skill of the whole course it is the lesson where it was tried', () => {
    expect(rowOf(fails(10, 'flinch'), 'diagnose').help?.number).toBe('3.2');
  });
});

describe('what is due', () => {
  const known = passed('one-vane', [0, 1, 2]);
  // Three days after mastery on Monday: the first day of the schedule in schedule.test.ts.
  const words = (now: number) => standingWords(rowOf(known, 'shortest-turn', now).standing, now);

  test('from the morning of its day on, in words', () => {
    expect(words(noon(0))).toBe('known; review on 5 November');
    expect(sheet(known, noon(2)).due).toEqual([]);
    const morning = noon(3) - 11 * 3_600_000;
    expect(words(morning)).toBe('known; due for review today');
    expect(sheet(known, morning).due.map(({ skill }) => skill.id)).toEqual(['shortest-turn']);
    expect(words(noon(5))).toBe('known; due for review since 5 November');
  });

  test('a missed review is told', () => {
    const missed = attempt('one-vane', 3, { when: noon(3), ...FAILED });
    const { standing } = rowOf([...known, missed], 'shortest-turn', noon(3));
    expect(standingWords(standing, noon(3))).toBe('known; missed when last reviewed, review on 6 November');
  });

  test('the one longest due comes first', () => {
    const later = [0, 1, 2].map((seed) => attempt('flinch', seed, { when: noon(1) + seed }));
    const due = sheet([...later, ...known], noon(9)).due.map(({ skill }) => skill.id);
    expect(due).toEqual(['shortest-turn', 'in-line-at-rest', 'diagnose']);
  });
});

test('the words of what is not known', () => {
  expect(standingWords({ is: 'not-begun' }, noon(0))).toBe('not begun');
  expect(standingWords({ is: 'under-way', inARow: 1, tries: 4 }, noon(0))).toBe('under way: 1 of 3 in a row');
});
