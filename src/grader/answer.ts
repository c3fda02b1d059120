import { accept, type Reader, reading, refuse } from '../solver/document/reader.ts';
import { readText } from '../solver/document/readText.ts';
import type { Reading } from '../solver/document/refusal.ts';
import { dictionary, keyPath, needed, optional, record } from '../solver/document/structures.ts';
import { exactly, number, text } from '../solver/document/values.ts';
import { quoted } from '../solver/document/words.ts';
import { readRig } from '../solver/index.ts';
import type { Answer } from './exercise/definition.ts';

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

/** What reading an answer must know of the exercise it is to. */
export interface Asked {
  edition: string;
  parts: readonly { id: string }[];
}

/** The exercise of an id for a seed, or null where there is none. */
export type AskedOf = (id: string, seed: number) => Asked | null;

/**
 * Reads an answer document. Refused are unknown exercises, an answer without the rig that its exercise asks
 * for, and parts that the exercise does not have; those of another edition are passed over.
 */
export function readAnswer(value: unknown, askedOf: AskedOf): Reading<Answer> {
  return reading(() => {
    const read = answer(value, null);
    const asked = askedOf(read.exercise, read.seed);
    if (!asked) return refuse(quoted(read.exercise), 'the id of an exercise of this course', ['exercise']);
    if (!read.rig) return refuse('nothing', 'the rig that was built', ['rig']);
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
