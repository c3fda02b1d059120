import { describe, expect, test } from 'vitest';
import { exerciseSchema } from '../../src/course/exercise-schema.ts';
import { shortagesOf } from '../../src/course/exercise-shortages.ts';
import { newExercise } from '../../src/course/kit/new-exercise.ts';
import { STEPS } from '../../src/course/kit/walk-through.ts';
import { auditVariant } from '../../src/grader/audit/auditVariant.ts';
import { type ExerciseDefinition, markingOf, openExercise } from '../../src/grader/index.ts';

const laidOut = newExercise('a-vane');

/** The exercise after the first `count` steps of the authors' page. */
function builtBy(count: number): ExerciseDefinition {
  const fields = Object.assign({}, laidOut['exercise.json'], ...STEPS.slice(0, count).map((step) => step.fields));
  return exerciseSchema.parse({ ...fields, start: laidOut['start.json'] }) as unknown as ExerciseDefinition;
}

const auditAfter = (count: number) =>
  auditVariant(markingOf(openExercise(builtBy(count), { edition: 'e', seed: 0 })), { samples: 60, mutants: 200 });

describe('the walk through making an exercise', () => {
  test.each(STEPS.map(({ id }, index) => [id, index + 1]))('fits the schema after the step %s', (_, count) => {
    expect(() => openExercise(builtBy(count as number), { edition: 'e', seed: 0 })).not.toThrow();
  });

  test('begins with a folder that lacks its words, references and wrong turns, and is told so', () => {
    const told = shortagesOf(builtBy(0));
    expect(told).toContain('a-vane: 0 references, expected at least 2');
    expect(told).toContain('a-vane: 0 wrong turns, expected at least 3');
    expect(told).toContain('a-vane, at /task: still to be written: what to make, as a supervisor would say it');
    expect(auditAfter(0).findings.join()).toMatch(/no reference to make right and wrong rigs from/);
  });

  test('before the last step the audit leaves rigs for the author to decide', () => {
    const { counts, findings } = auditAfter(STEPS.length - 1);
    expect(counts.undecided).toBeGreaterThan(0);
    expect(findings.join()).toMatch(/pointer: .* looks different and breaks nothing/);
  });

  test('ends with an exercise that lacks nothing and whose audit finds nothing', () => {
    expect(shortagesOf(builtBy(STEPS.length))).toEqual([]);
    const { counts, findings } = auditAfter(STEPS.length);
    expect(findings).toEqual([]);
    expect(counts.rightTried).toBeGreaterThan(15);
    expect(counts.wrongTried).toBeGreaterThan(40);
  });
});
