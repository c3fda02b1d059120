import { readAnswerText } from '../../grader/answer.ts';
import type { Answer } from '../../grader/exercise/answer.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import type { Pose } from '../../solver/document/rig.ts';
import { answeredBy } from '../answer/kinds.ts';
import { poseOfInputs } from '../answer/poseInputs.ts';
import type { Draft, DraftResponse } from '../edit/draft.ts';
import { changeDriver } from '../edit/drivers.ts';

/** The work in an answer document; a pose where that is the answer. */
export interface Opened {
  readonly draft: Draft;
  readonly pose?: Pose;
}

/** The work in an answer document for this exercise, or why it cannot be taken. */
export function draftFromText(text: string, exercise: Exercise): Reading<Opened> {
  const read = readAnswerText(text, () => exercise);
  if (!read.ok) return read;
  const { exercise: id, seed } = read.value;
  if (id !== exercise.id) return refused('/exercise', `an answer to ${id}`, `one to ${exercise.id}`);
  if (seed !== exercise.seed) return refused('/seed', `the variant of seed ${seed}`, `that of seed ${exercise.seed}`);
  return { ok: true, value: opened(read.value, exercise) };
}

/** The answer was read against its exercise, so its rig or response is what the kind asks for. */
function opened({ rig, parts = {}, response }: Answer, exercise: Exercise): Opened {
  const start: Draft = { rig: exercise.start, parts: {} };
  switch (answeredBy(exercise)) {
    case 'rig':
      return { draft: { rig: rig!, parts } };
    case 'map': {
      const { map } = response as { map: Parameters<typeof withMap>[2] };
      return { draft: withMap(start, exercise.shape!, map) };
    }
    case 'pose': {
      const { inputs } = response as { inputs: Record<string, number> };
      return { draft: start, pose: poseOfInputs(inputs, start, exercise) };
    }
    case 'form':
      return { draft: { ...start, response: response as DraftResponse } };
  }
}

function withMap(draft: Draft, driver: string, map: NonNullable<Draft['rig']['drivers']>[number]['map']): Draft {
  return changeDriver(driver, 'map', (old) => ({ ...old, map })).apply(draft);
}

function refused(place: string, found: string, expected: string): Reading<never> {
  return { ok: false, refusal: { place, found, expected } };
}
