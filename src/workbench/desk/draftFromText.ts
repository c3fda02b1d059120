import { readAnswerText } from '../../grader/answer.ts';
import type { Exercise } from '../../grader/exercise/definition.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import type { Draft } from '../edit/draft.ts';

/** The work in an answer document for this exercise, or why it cannot be taken. */
export function draftFromText(text: string, exercise: Exercise): Reading<Draft> {
  const read = readAnswerText(text, () => exercise);
  if (!read.ok) return read;
  const { exercise: id, seed, rig, parts } = read.value;
  if (id !== exercise.id) {
    return refused('/exercise', `an answer to ${id}`, `one to ${exercise.id}`);
  }
  if (seed !== exercise.seed) return refused('/seed', `the variant of seed ${seed}`, `that of seed ${exercise.seed}`);
  return { ok: true, value: { rig: rig!, parts: parts ?? {} } };
}

function refused(place: string, found: string, expected: string): Reading<never> {
  return { ok: false, refusal: { place, found, expected } };
}
