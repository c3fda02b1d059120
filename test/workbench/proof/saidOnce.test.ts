import { expect, test } from 'vitest';
import { gradeWork } from '../../../src/grader/grade.ts';
import { messageOf } from '../../../src/grader/index.ts';
import { saidOnce } from '../../../src/workbench/proof/saidOnce.ts';
import { markingFor } from '../../support/exercises.ts';

/** What the sheet says of an exercise's start, in the order of its requirements. */
function saidOfStart(id: string): string[] {
  const marking = markingFor(id);
  const { exercise } = marking;
  const result = gradeWork(marking, { rig: exercise.start });
  const messages = Object.fromEntries(result.requirements.map((one) => [one.id, messageOf(exercise, one)]));
  return [...saidOnce(exercise, { result, messages }).values()];
}

test('a wrong turn that several requirements show is told once', () => {
  const { exercise } = markingFor('boom-off-its-pin');
  const { tells } = exercise.wrongTurns.find(({ id }) => id === 'base-behind')!;
  const [first, ...others] = saidOfStart('boom-off-its-pin');
  expect(first).toContain(tells);
  expect(others).toHaveLength(2);
  for (const other of others) expect(other).toMatch(/\. The reason is told above\.$/);
});

test('a part that nothing stands for is asked for once', () => {
  const [first, ...others] = saidOfStart('lid-on-one-axis');
  expect(first).toMatch(/^Which bone is the holder\?/);
  expect(new Set(others)).toEqual(new Set(['The same as above.']));
});
