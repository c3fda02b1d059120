import { describe, expect, test } from 'vitest';
import { glossarySchema } from '../../src/course/glossary-schema.ts';
import { lessonSchema, privateLessonSchema } from '../../src/course/lesson-schema.ts';

const lesson = {
  number: '3.1',
  title: 'The shortest turn',
  idea: 'An aim turns by the shortest way.',
  why: 'Whoever moves the kite sees the vane roll.',
  minutes: 8,
  skills: ['shortest-turn'],
  card: ['An aim turns by the shortest way.', 'It says nothing about roll.'],
};

test('a lesson’s head is read, and what may be left out is empty', () => {
  expect(lessonSchema.parse(lesson)).toEqual({ ...lesson, exercises: [], terms: [] });
});

test('a private lesson has a number of the plan, or one of the chapter after it', () => {
  const heads = ['3.1', '7.1', '7.9', '3.9', '8.1'].map((number) => ({ ...lesson, number }));
  expect(heads.filter((head) => privateLessonSchema.safeParse(head).success)).toEqual(heads.slice(0, 3));
  expect(lessonSchema.safeParse({ ...lesson, number: '7.1' }).success).toBe(false);
});

describe('a head is refused, with the field', () => {
  test.each([
    ['with a misspelt field', { ...lesson, excercises: [] }, '', /Unrecognized key: "excercises"/],
    ['without an idea', { ...lesson, idea: undefined }, 'idea', /expected string, received undefined/],
    ['with a number that is no string', { ...lesson, number: 3.1 }, 'number', /expected string, received number/],
    ['with a lesson that the plan lacks', { ...lesson, number: '3.9' }, 'number', /outline/],
    ['with too much to read', { ...lesson, minutes: 13 }, 'minutes', /<=12/],
    ['with a skill in capitals', { ...lesson, skills: ['Aim'] }, 'skills.0', /lower-case/],
    ['without a skill', { ...lesson, skills: [] }, 'skills', />=1/],
    ['with one line on its card', { ...lesson, card: ['One line alone.'] }, 'card', />=2/],
  ])('%s', (_, head, place, message) => {
    const [issue] = lessonSchema.safeParse(head).error!.issues;
    expect(issue!.path.join('.')).toBe(place);
    expect(issue!.message).toMatch(message);
  });
});

test('a glossary entry with a misspelt field or origin is refused', () => {
  const entry = { word: 'tip', means: 'The far end of a bone.', from: 'ours' };
  expect(glossarySchema.parse(entry)).toEqual({ ...entry, others: [] });
  expect(glossarySchema.safeParse({ ...entry, meaning: 'x' }).success).toBe(false);
  expect(glossarySchema.safeParse({ ...entry, from: 'mine' }).success).toBe(false);
});
