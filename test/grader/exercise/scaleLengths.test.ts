import { expect, test } from 'vitest';
import { scaleLengthsIn } from '../../../src/grader/exercise/scaleLengths.ts';
import { exerciseFor } from '../../support/exercises.ts';

test.each([
  ['The base is 30 cm behind the pin.', 2, 'The base is 60 cm behind the pin.'],
  ['Move it by −0.15 m, or by 0.07 m.', 2, 'Move it by −0.3 m, or by 0.14 m.'],
  ['15 cm, and 2 mm', 0.5, '7.5 cm, and 1 mm'],
  ['30° at 0.5 in 3 moves', 2, '30° at 0.5 in 3 moves'],
])('in "%s" lengths become %d times as long, and nothing else', (text, factor, longer) => {
  expect(scaleLengthsIn([{ says: text }], factor)).toEqual([{ says: longer }]);
});

test('at another size the texts of an exercise tell the lengths of its rig', () => {
  const structures = 4;
  for (const [seed, off] of [
    [0, 0.3],
    [structures, 0.6],
    [2 * structures, 0.15],
  ] as const) {
    const exercise = exerciseFor('boom-off-its-pin', seed);
    const [joint, boom] = ['joint_mark', 'boom'].map((of) => exercise.start.bones.find(({ name }) => name === of)!);
    expect(joint!.rest.base[2] - boom!.rest.base[2]).toBeCloseTo(off, 12);
    const says = `${off * 100} cm behind`;
    expect(exercise.wrongTurns[0]!.tells).toContain(says);
    expect(exercise.hints.at(-1)!.says).toContain(says);
  }
});
