import { expect, test } from 'vitest';
import { answerOf } from '../../../src/workbench/answer/answerOf.ts';
import { proveAnswer } from '../../../src/workbench/desk/proveAnswer.ts';
import { addLink } from '../../../src/workbench/edit/addLink.ts';
import { frameAt } from '../../../src/workbench/plate/frame.ts';
import { unit } from '../../../src/workbench/plate/vector.ts';
import { actualFor, expectedFor } from '../../../src/workbench/proof/expected.ts';
import { measuredWords } from '../../../src/workbench/proof/measuredWords.ts';
import { readiness } from '../../../src/workbench/proof/readiness.ts';
import { stampOf } from '../../../src/workbench/proof/record.ts';
import { verdict } from '../../../src/workbench/proof/verdict.ts';
import { newSession, reduce } from '../../../src/workbench/state/session.ts';
import { courseExercise } from '../support/exercise.ts';

const exercise = courseExercise('one-vane');
const start = newSession({ rig: exercise.start, parts: {} });
const aimed = reduce(start, { do: 'edit', edit: addLink('vane_left', 'aim', 'kite'), slot: '', when: 1 });

test('the untouched start earns nothing; an aim proves it', () => {
  const before = proveAnswer(exercise, answerOf(start, exercise));
  expect(before.result.mark).toBe(0);
  expect(verdict(before.result)).toMatch(/^\d+ of \d+ requirements are met\. Mark 0 %\.$/);
  const after = proveAnswer(exercise, answerOf(aimed, exercise));
  expect(after.result.passed).toBe(true);
  expect(verdict(after.result)).toMatch(/^Proved: all \d+ requirements are met\. Mark 100 %\.$/);
  expect(Object.keys(after.messages)).toEqual(exercise.requirements.map(({ id }) => id));
});

test('a gate that is lost is said, for it alone makes the mark 0', () => {
  const { result } = proveAnswer(exercise, answerOf(aimed, exercise));
  const requirements = result.requirements.map((each) => (each.gate ? { ...each, status: 'missed' as const } : each));
  expect(verdict({ ...result, passed: false, mark: 0, requirements })).toContain('held at the start no longer holds');
});

test('a proof is of the state it was made of: after an edit it is stale, after undo it is not', () => {
  const { result, messages } = proveAnswer(exercise, answerOf(aimed, exercise));
  const proof = { when: 2, result, messages, stamp: stampOf(aimed, exercise), guess: null };
  const proved = reduce(aimed, { do: 'prove', proof });
  expect(readiness(proved, exercise).stale).toBe(false);
  const changed = reduce(proved, { do: 'edit', edit: addLink('vane_left', 'limit', 'kite'), slot: '', when: 3 });
  expect(readiness(changed, exercise).stale).toBe(true);
  expect(readiness(reduce(changed, { do: 'undo' }), exercise).stale).toBe(false);
});

test('in a counterpose, the bone that is asked for stands where a right answer has it', () => {
  const pose = { bones: { kite: { move: [1.2, 0, 0] as const } } };
  const { document } = start.history;
  const expected = expectedFor(exercise, 'points', document, pose)!;
  expect(expected.bones).toEqual(['vane_left']);
  const index = expected.solved.rig.bones.findIndex(({ name }) => name === 'vane_left');
  const kite = expected.solved.rig.bones.findIndex(({ name }) => name === 'kite');
  const [own, target] = [frameAt(expected.solved.world, index), frameAt(expected.solved.world, kite)];
  const toward = unit([target.base[0] - own.base[0], target.base[1] - own.base[1], target.base[2] - own.base[2]]);
  for (const i of [0, 1, 2]) expect(unit(own.z)[i]).toBeCloseTo(toward[i]!, 12);
  expect(actualFor(exercise, 'points', document)).toBe('vane_left');
  expect(expectedFor(exercise, 'runs', document, pose)).toBe(null);
});

test('what was measured is told beside what is allowed, and what only the arithmetic left as none', () => {
  expect(measuredWords(0.2, { allowed: 0.5, unit: 'cm' })).toBe('Measured 0.2 cm, allowed 0.5 cm');
  expect(measuredWords(4.44e-14, { allowed: 1, unit: '%' })).toBe('Measured 0 %, allowed 1 %');
  expect(measuredWords(4.44e-14, { allowed: 0, unit: 'cm' })).not.toContain('Measured 0 cm');
});

test('of several bones that a requirement speaks of each is expected; of two that are to mirror none', () => {
  const eyes = courseExercise('off-the-middle');
  const draft = { rig: eyes.start, parts: {} };
  expect(expectedFor(eyes, 'right-meets', draft, {})?.bones).toEqual(['eye_right']);
  const face = courseExercise('nobody-on-the-right');
  expect(expectedFor(face, 'mirrors', { rig: face.start, parts: {} }, {})).toBeNull();
});
