import { allExercises } from './support/exercises.ts';
import { expectSameMarks } from './support/same-mark.ts';
import { test } from './support/test.ts';

for (const exercise of allExercises()) {
  test(`${exercise.id} is marked alike by the page and the command line`, ({ page }) => {
    return expectSameMarks(page, exercise);
  });
}
