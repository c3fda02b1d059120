import { describe, expect, test } from 'vitest';
import { lessonFaults } from '../../src/course/site/lesson-faults.ts';

const plate = (n: number) => `<figure class="plate" id="plate-${n}"></figure>`;
const term = (id: string) => `<button class="term" popovertarget="word-${id}"></button>`;
const exercise = (id: string) => `<section class="exercise" id="exercise-${id}"></section>`;
const text = plate(1) + term('tip') + plate(2) + term('tip') + exercise('one-vane') + exercise('let-go');

test('a lesson whose head and text agree has no fault', () => {
  expect(lessonFaults({ terms: ['tip'], exercises: ['one-vane', 'let-go'] }, text)).toEqual([]);
  expect(lessonFaults({ terms: [], exercises: [] }, '<math><mi>θ</mi><mo>−</mo><mi>𝐭</mi></math>')).toEqual([]);
});

describe('it is a fault', () => {
  test.each([
    ['to skip a plate', text.replace('plate-2', 'plate-3'), /numbered 1, 3/],
    ['to number two plates alike', text.replace('plate-2', 'plate-1'), /numbered 1, 1/],
    ['to list a word that is not used', text.replaceAll('word-tip', 'word-base'), /"tip", which no <Term> opens/],
    ['to use a word that is not listed', text + term('base'), /<Term id="base"> is not among/],
    ['to leave an exercise out', text.replace(exercise('let-go'), ''), /shows \[one-vane\]/],
    [
      'to show exercises in another order',
      exercise('let-go') + text.replace(exercise('let-go'), ''),
      /shows \[let-go, one-vane\]/,
    ],
    ['to use a sign that the font lacks', `${text}<math><mi>θ</mi><mo>⊎</mo></math>`, /lacks ⊎ \(U\+228E\)/],
  ])('%s', (_, html, message) => {
    expect(lessonFaults({ terms: ['tip'], exercises: ['one-vane', 'let-go'] }, html).join()).toMatch(message);
  });
});
