import { readExerciseFile } from '../../src/course/exercise-files.ts';
import type { Assignment } from '../../src/delivery/assignment/assignment.ts';
import { makeAssignment, type Plan } from '../../src/delivery/assignment/makeAssignment.ts';
import { AssignmentGrader } from '../../src/delivery/mark/gradeAnswer.ts';
import { seedOf } from '../../src/delivery/variant/seed.ts';
import { contentDir } from '../support/exercises.ts';

export const definitionOf = (id: string) => readExerciseFile(contentDir, id).definition;

export const PLAN: Plan = {
  id: 'quay-week-1',
  title: 'On the quay',
  exercises: [
    { id: 'one-vane', weight: 2 },
    { id: 'how-high-the-hook', weight: 1 },
  ],
  passMark: 0.6,
  due: '2026-12-04T17:00+01:00',
  late: { perDay: 0.1, until: '2026-12-07T17:00+01:00' },
};

export function assignmentOf(more: Partial<Plan> = {}): Assignment {
  const made = makeAssignment({ ...PLAN, ...more }, definitionOf);
  if (!made.ok) throw new Error(JSON.stringify(made.refusal));
  return made.value;
}

/** The first reference of an exercise, or its first wrong turn, answered by a learner in the learner's own variant. */
export function answerOf(
  assignment: Assignment,
  learner: string,
  id: string,
  { wrong = false, attempt = 1 } = {},
): Record<string, unknown> {
  const seed = seedOf(assignment.id, learner, id, attempt);
  const exercise = new AssignmentGrader({ assignment, signedBy: null }).exerciseOf(id, seed)!;
  const work = wrong ? exercise.wrongTurns[0]! : exercise.references[0]!;
  const head = {
    format: 'counterpose/answer',
    version: 1,
    exercise: id,
    edition: exercise.edition,
    seed,
    learner,
    attempt,
  };
  if (exercise.kind === 'build' || exercise.kind === 'repair')
    return { ...head, rig: work.rig, parts: work.parts ?? {} };
  return { ...head, response: { values: work.values } };
}
