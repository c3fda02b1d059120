import { describe, expect, test } from 'vitest';
import { auditVariant } from '../../../src/grader/audit/auditVariant.ts';
import { equalAnswers, wrongAnswers } from '../../../src/grader/audit/responses.ts';
import { gradeWork } from '../../../src/grader/grade.ts';
import { markingOfSmall } from './fitting.ts';

const bare = { references: [], wrongTurns: [], freeChoices: [] };
const angle = {
  id: 'angle',
  kind: 'value',
  gauge: { axis: '+z', of: 'vane', toward: { bone: 'kite' } },
  pose: { bones: { kite: { move: [2, 0, 0] } } },
  allowed: 1,
  says: 'By how many degrees does the vane miss the kite?',
};

describe('a prediction of 45°', () => {
  const wrongTurns = [
    { id: 'half', says: 'half', tells: 'Half.', slip: { times: 0.5 }, misses: ['angle'] },
    { id: 'other', says: 'other', tells: 'Other.', slip: { times: -1 }, misses: ['angle'] },
  ];
  const references = [{ id: 'truth', says: 'what the rig does' }];
  const marking = markingOfSmall({ ...bare, kind: 'predict', requirements: [angle], references, wrongTurns });
  const [truth] = marking.exercise.references;

  test('is right within what is allowed, and wrong by sign, half, double and twice what is allowed', () => {
    const said = (ones: ReturnType<typeof wrongAnswers>) =>
      ones.map(([, { values }]) => Number(values!.angle!.toFixed(6)));
    expect(said(equalAnswers(marking.exercise, truth!))).toEqual([45.4, 44.6]);
    expect(said(wrongAnswers(marking.exercise, truth!))).toEqual([-45, 22.5, 90, 47, 43]);
    for (const [says, work] of equalAnswers(marking.exercise, truth!))
      expect(gradeWork(marking, work).passed, says).toBe(true);
    for (const [says, work] of wrongAnswers(marking.exercise, truth!))
      expect(gradeWork(marking, work).passed, says).toBe(false);
  });

  test('is audited by its numbers', () => {
    const { counts, findings } = auditVariant(marking, { samples: 10, mutants: 100 });
    expect(findings).toEqual([]);
    expect(counts).toMatchObject({ rightTried: 3, rightRefused: 0, wrongTried: 7, wrongPassed: 0 });
  });
});

test('an order goes wrong by two neighbours swapped', () => {
  const order = ['kite', 'vane.watch', 'vane'];
  const { exercise } = markingOfSmall();
  expect(wrongAnswers(exercise, { rig: exercise.start, order }).map(([, work]) => work.order)).toEqual([
    ['vane.watch', 'kite', 'vane'],
    ['kite', 'vane', 'vane.watch'],
  ]);
});

test('a pose goes wrong by an input forgotten, turned round, halved, or thrown to an end', () => {
  const { exercise } = markingOfSmall();
  const tried = wrongAnswers(exercise, { rig: exercise.start, inputs: { aside: 1 } }).map(([, work]) => work.inputs);
  expect(tried).toContainEqual({});
  for (const aside of [-1, 0.5, -2, 2]) expect(tried).toContainEqual({ aside });
  expect(tried).toContainEqual({ aside: 1, yaw: 60 });
});
