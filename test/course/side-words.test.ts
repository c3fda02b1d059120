import { expect, test } from 'vitest';
import { exerciseIds, readExerciseFile } from '../../src/course/exercise-files.ts';
import { shortagesOf } from '../../src/course/exercise-shortages.ts';
import { noSidesIn } from '../../src/course/side-words.ts';
import { contentDir } from '../support/exercises.ts';

test.each([
  ['The lid has left its hinge.', 'has left'],
  ['No weight left at this end.', 'weight left'],
  ['A lock left open is silent.', 'lock left'],
  ['The sign was right.', 'was right'],
  ['It stands at the right height.', 'right height'],
])('in "%s" the word is no side', (text, words) => {
  expect(noSidesIn({ hints: [{ says: text }] })).toEqual([['/hints/0/says', words]]);
});

test.each(['the left lid', 'The last word of a name, left or right', 'lid_left', 'Holder and left target are given.'])(
  'in "%s" it is one',
  (text) => {
    expect(noSidesIn(text)).toEqual([]);
  },
);

test('an exercise that is reflected speaks of sides only', () => {
  expect(exerciseIds(contentDir).flatMap((id) => shortagesOf(readExerciseFile(contentDir, id).definition))).toEqual([]);
});
