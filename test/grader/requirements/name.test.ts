import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const parts = ['one', 'two'].map((id) => ({ id, is: 'bone', name: 'vane_left', given: false, says: id }));
const asked = { kind: 'name', bones: ['one', 'two'], words: '*_left', allowed: 0 };
const quay = rigOf([
  bone('vane_left', null, [0, 0, 0]),
  bone('Vane_left', null, [1, 0, 0]),
  bone('vane_right', null, [2, 0, 0]),
]);

test('capitals and another side do not fit', () => {
  const exercise = exerciseOf(quay, [], asked, { parts });
  expectMet(found(exercise), 0);
  expectMissed(found(exercise, { parts: { two: 'Vane_left' } }), 1);
  expectMissed(found(exercise, { parts: { one: 'vane_right', two: 'Vane_left' } }), 2);
});
