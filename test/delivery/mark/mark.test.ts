import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/delivery/assignment/makeAssignment.ts';
import { AssignmentGrader } from '../../../src/delivery/mark/gradeAnswer.ts';
import { latenessOf } from '../../../src/delivery/mark/lateness.ts';
import { assignedMarking } from '../../../src/delivery/mark/markings.ts';
import { markSubmission } from '../../../src/delivery/mark/markSubmission.ts';
import type { Submission } from '../../../src/delivery/submission/submission.ts';
import { openExercise } from '../../../src/grader/index.ts';
import { answerOf, assignmentOf, definitionOf } from '../support.ts';

const IN_TIME = '2026-12-04T12:00+01:00';

function marked(
  answers: readonly unknown[],
  { more = {}, collected = IN_TIME }: { more?: Partial<Plan>; collected?: string } = {},
) {
  const opened = { assignment: assignmentOf(more), signedBy: 'somebody' };
  const submission: Submission = {
    format: 'counterpose/submission',
    version: 1,
    assignment: 'quay-week-1',
    learner: 'otter-7',
    answers,
  };
  return markSubmission(opened, new AssignmentGrader(opened), submission, collected);
}

const assignment = assignmentOf();
const vane = answerOf(assignment, 'otter-7', 'one-vane');
const hook = answerOf(assignment, 'otter-7', 'how-high-the-hook');
const wrongVane = answerOf(assignment, 'otter-7', 'one-vane', { wrong: true });

describe('the mark of a submission', () => {
  test('is whole for references, in the learner’s own variants', () => {
    expect(marked([vane, hook])).toMatchObject({ mark: 1, worth: 1, passed: true, flags: [], chain: 'none' });
  });

  test('weighs the exercises; what is not answered is worth nothing', () => {
    expect(marked([vane]).mark).toBeCloseTo(2 / 3, 12);
    expect(marked([hook])).toMatchObject({ passed: false });
    expect(marked([hook]).mark).toBeCloseTo(1 / 3, 12);
    expect(marked([]).mark).toBe(0);
  });

  test('counts the best answer, of as many as are allowed', () => {
    const both = marked([wrongVane, vane, hook]);
    expect(both).toMatchObject({ mark: 1, exercises: [{ counted: 1 }, { counted: 0 }] });
    const one = marked([wrongVane, vane, hook], { more: { attempts: 1 } });
    expect(one.flags).toEqual(['too-many-attempts']);
    expect(one.exercises[0]!.mark).toBeLessThan(1);
  });

  test('counts the last answer where that is the rule', () => {
    const opened = { assignment, signedBy: 'somebody' };
    const submission: Submission = {
      format: 'counterpose/submission',
      version: 1,
      assignment: 'quay-week-1',
      learner: 'otter-7',
      answers: [vane, wrongVane, hook, null],
    };
    const last = markSubmission(opened, new AssignmentGrader(opened), submission, IN_TIME, 'last');
    expect(last.exercises).toMatchObject([{ counted: 1 }, { counted: 0, mark: 1 }]);
    expect(last.exercises[0]!.mark).toBeLessThan(1);
  });

  test('does not count a drawing picked from beyond the attempts', () => {
    const second = answerOf(assignment, 'otter-7', 'how-high-the-hook', { attempt: 2 });
    expect(marked([vane, second], { more: { attempts: 2 } })).toMatchObject({ mark: 1, flags: [] });
    const beyond = marked([vane, second], { more: { attempts: 1 } });
    expect(beyond.exercises[1]).toMatchObject({ counted: null, mark: 0 });
    expect(beyond.flags).toEqual(['too-many-attempts']);
  });

  test('takes for each day begun, and all after the last', () => {
    expect(marked([vane, hook], { collected: '2026-12-04T17:00+01:00' }).flags).toEqual([]);
    expect(marked([vane, hook], { collected: '2026-12-04T16:00:01Z' })).toMatchObject({ mark: 0.9, flags: ['late'] });
    expect(marked([vane, hook], { collected: '2026-12-06T12:00+01:00' }).mark).toBeCloseTo(0.8, 12);
    expect(marked([vane, hook], { collected: '2026-12-08T12:00Z' })).toMatchObject({
      mark: 0,
      worth: 1,
      flags: ['too-late'],
    });
  });

  test('is not what the file says it is', () => {
    const forged = { ...wrongVane, mark: 1, passed: true };
    const result = marked([forged]);
    expect(result.flags).toContain('unusable-answer');
    expect(result.mark).toBe(0);
  });

  test('is flagged for another learner’s variant and name', () => {
    const copied = answerOf(assignment, 'toad-2', 'one-vane');
    expect(marked([copied]).flags).toEqual(expect.arrayContaining(['other-variant', 'names-another-learner']));
    const { learner: _, ...nameless } = copied;
    expect(marked([nameless]).flags).toEqual(['other-variant']);
  });

  test('goes on past what cannot be used, and past what is not assigned', () => {
    const result = marked([null, 3, 'x', { exercise: 'one-vane' }, { exercise: 'gull' }, vane, hook]);
    expect(result.mark).toBe(1);
    expect(result.flags).toEqual(expect.arrayContaining(['unusable-answer', 'not-assigned']));
  });
});

describe('other tolerances', () => {
  test('change what is allowed, but no gate', () => {
    const definition = definitionOf('one-vane');
    const plain = assignedMarking(definition, {}, { edition: 'e', seed: 0 });
    const all = Object.fromEntries(definition.requirements.map(({ id }) => [id, 7]));
    const loose = assignedMarking(definition, all, { edition: 'e', seed: 0 });
    expect(loose.gates).toEqual(plain.gates);
    loose.exercise.requirements.forEach((one, i) => {
      const authored = plain.exercise.requirements[i]!;
      expect(one.allowed, one.id).toBe(plain.gates.has(one.id) ? authored.allowed : 7);
    });
    expect(loose.gates.size).toBeGreaterThan(0);
    expect(loose.wrongs().filter(({ wrong }) => wrong).length).toBe(plain.exercise.wrongTurns.length);
  });
});

test('where nobody knows when it came, it is neither late nor early', () => {
  expect(latenessOf(assignment, null)).toEqual({ state: 'unknown', days: 0, taken: 0 });
  expect(latenessOf(assignment, 'yesterday')).toEqual({ state: 'unknown', days: 0, taken: 0 });
  expect(latenessOf({ ...assignment, opens: '2026-12-01T00:00Z' }, '2026-11-30T00:00Z').state).toBe('early');
});

test('a variant is the same to whichever of its learners it is opened for', () => {
  const opened = { assignment: assignmentOf(), signedBy: null };
  const one = new AssignmentGrader(opened);
  const seeds = [3, 3 + 6000, 3 + 2 ** 40 * 30];
  for (const seed of seeds) {
    const alone = new AssignmentGrader(opened).exerciseOf('one-vane', seed)!;
    expect(one.exerciseOf('one-vane', seed)).toEqual(alone);
    expect(alone).toEqual(openExercise(definitionOf('one-vane'), { edition: alone.edition, seed }));
  }
});
