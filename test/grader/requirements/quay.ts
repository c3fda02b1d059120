import { expect } from 'vitest';
import type { Exercise, ExerciseDefinition } from '../../../src/grader/index.ts';
import { openExercise } from '../../../src/grader/index.ts';
import { type Finding, prove } from '../../../src/grader/prove.ts';
import type { Work } from '../../../src/grader/responses/response.ts';
import { type Rig, readRig } from '../../../src/solver/index.ts';
import { mustRead } from '../../solver/document/trial.ts';
import { expectClose } from '../../support/close.ts';
import { smallExercise } from '../audit/fitting.ts';

export const upright = [0, 0, 0, 1] as const;
/** A bone 0.5 m long that points forward. */
export const bone = (name: string, parent: string | null, base: readonly number[], more: object = {}) => ({
  name,
  parent,
  role: 'helper',
  rest: { base, turn: upright, length: 0.5 },
  ...more,
});

export function rigOf(bones: readonly object[], more: object = {}): Rig {
  return mustRead(readRig({ format: 'counterpose/rig', version: 1, bones, ...more }));
}

/** An exercise with this start, these inputs and the one requirement. */
export function exerciseOf(start: Rig, inputs: readonly object[], requirement: object, more: object = {}): Exercise {
  const asked = { id: 'asked', says: 'It is asked.', ...requirement };
  const bare = { kept: [], references: [], wrongTurns: [], freeChoices: [] };
  const definition = smallExercise({ ...bare, start, inputs, requirements: [asked], ...more });
  return openExercise(definition as ExerciseDefinition, { edition: 'e', seed: 0 });
}

/** What the requirement finds in a rig; the start where none is given. */
export function found(exercise: Exercise, work: Partial<Work> = {}): Finding {
  return prove(exercise, { rig: exercise.start, ...work }).findings[0]!;
}

/** Fails unless the requirement is met and measures this, to six digits. */
export const expectMet = (finding: Finding, measured: number) => expectStatus(finding, 'met', measured);
export const expectMissed = (finding: Finding, measured: number) => expectStatus(finding, 'missed', measured);

function expectStatus(finding: Finding, status: Finding['status'], measured: number): void {
  expect(finding.status, `measured ${finding.measured}`).toBe(status);
  expectClose(finding.measured!, measured, Math.max(1e-6, 1e-5 * measured));
}
