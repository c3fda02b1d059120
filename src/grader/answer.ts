import { accept, type Reader, readAt, reading, refuse } from '../solver/document/reader.ts';
import { readText } from '../solver/document/readText.ts';
import type { Reading } from '../solver/document/refusal.ts';
import { dictionary, keyPath, needed, optional, record } from '../solver/document/structures.ts';
import { exactly, number, text } from '../solver/document/values.ts';
import { quoted } from '../solver/document/words.ts';
import { readRig } from '../solver/index.ts';
import type { Answer } from './exercise/answer.ts';
import type { Exercise } from './exercise/exercise.ts';
import { responseKindOf } from './responses/response.ts';

const SEED_LIMIT = 281474976710656;

const anything: Reader<unknown> = (value) => value;
const wholeFrom = (least: number): Reader<number> =>
  number(`a whole number from ${least}`, (value) => Number.isInteger(value) && value >= least && value < SEED_LIMIT);

const answer = record<Answer>('an answer', {
  format: needed(exactly('counterpose/answer')),
  version: needed(exactly(1)),
  exercise: needed(text),
  edition: needed(text),
  seed: needed(wholeFrom(0)),
  rig: optional((value) => accept(readRig(value))),
  response: optional(anything),
  parts: optional(dictionary('parts: an object that names a bone or bone.switch for each part', () => text)),
  learner: optional(text),
  made: optional(text),
  steps: optional(anything),
  hints: optional(anything),
  attempt: optional(wholeFrom(1)),
  guess: optional(text),
});

/** The exercise of an id for a seed, or null where there is none. */
export type AskedOf = (id: string, seed: number) => Exercise | null;

/**
 * Reads an answer document. Refused are unknown exercises, an answer without the rig that its exercise asks
 * for, and parts that the exercise does not have; those of another edition are passed over.
 */
export function readAnswer(value: unknown, askedOf: AskedOf): Reading<Answer> {
  return reading(() => {
    const read = answer(value, null);
    const asked = askedOf(read.exercise, read.seed);
    if (!asked) return refuse(quoted(read.exercise), 'the id of an exercise of this course', ['exercise']);
    refuseWrongKind(read, asked);
    const ids = asked.parts.map(({ id }) => id);
    const stray = Object.keys(read.parts ?? {}).find((part) => !ids.includes(part));
    if (stray !== undefined && read.edition === asked.edition) {
      return refuse(quoted(stray), `a part of the exercise: ${ids.join(', ')}`, ['parts', ...keyPath(stray)]);
    }
    return read;
  });
}

/** Reads an answer from JSON of at most 1 MiB. */
export const readAnswerText = (json: string, askedOf: AskedOf): Reading<Answer> =>
  readText(json, (value) => readAnswer(value, askedOf));

/** Build and repair are answered by a rig, the other kinds by a response. */
function refuseWrongKind({ rig, response }: Answer, exercise: Exercise): void {
  const kind = responseKindOf(exercise.kind);
  if (!kind) {
    if (!rig) refuse('nothing', 'the rig that was built', ['rig']);
    return;
  }
  if (rig) refuse('a rig', `no rig: an exercise of kind ${exercise.kind} is answered by a response`, ['rig']);
  readAt('response', () => accept(kind.read(response, exercise)), response, null);
}
