import { ANSWERS } from './support/answers.ts';
import { exerciseOf } from './support/exercises.ts';
import { expectSameMarks } from './support/same-mark.ts';
import { test } from './support/test.ts';

for (const exercise of Object.keys(ANSWERS)) {
  test(`${exercise} is marked alike by the page and the command line`, ({ page }) => {
    return expectSameMarks(page, exerciseOf(exercise));
  });
}
