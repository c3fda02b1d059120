import { readJson } from '../solver/document/json.ts';
import { type Reader, reading, refuseValue } from '../solver/document/reader.ts';
import type { Reading } from '../solver/document/refusal.ts';
import { list, needed, optional, record } from '../solver/document/structures.ts';
import { boolean, exactly, number, refuseRepeatedWords } from '../solver/document/values.ts';
import type { Attempt } from './attempt.ts';
import { merged } from './merge.ts';

const FORMAT = 'counterpose/attempts';
/** Seeds are six bytes. */
const SEED_LIMIT = 2 ** 48;
/** The last moment a date can name (ECMA-262, "Time Values"). */
const TIME_LIMIT = 8.64e15;

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const id: Reader<string> = (value) =>
  typeof value === 'string' && ID.test(value)
    ? value
    : refuseValue(value, 'an id: small letters, digits and single hyphens');

const wholeBelow = (limit: number, what: string): Reader<number> =>
  number(`${what}: a whole number from 0`, (value) => Number.isInteger(value) && value >= 0 && value < limit);

const ids = list('skill ids', id);
const skills: Reader<readonly string[]> = (value, known) => {
  const read = ids(value, known);
  refuseRepeatedWords(read, 'skill');
  return read.toSorted();
};

const attempt = record<Attempt>('an attempt', {
  skills: needed(skills),
  exercise: needed(id),
  seed: needed(wholeBelow(SEED_LIMIT, 'a seed')),
  when: needed(wholeBelow(TIME_LIMIT, 'milliseconds since 1970')),
  passed: needed(boolean),
  aided: needed(boolean),
  named: optional(boolean),
});

interface AttemptsFile {
  format: typeof FORMAT;
  version: 1;
  attempts: readonly Attempt[];
}

const file = record<AttemptsFile>('a file of attempts', {
  format: needed(exactly(FORMAT)),
  version: needed(exactly(1)),
  attempts: needed(list('attempts', attempt)),
});

/** The attempts in a file's text, the earliest first; or where it departs from the format, and how. */
export function readAttempts(text: string): Reading<Attempt[]> {
  const json = readJson(text);
  if (!json.ok) return json;
  return reading(() => merged(file(json.value, null).attempts));
}

/** The document that keeps attempts in a file, the earliest first. */
export function attemptsDocument(attempts: readonly Attempt[]): AttemptsFile {
  return { format: FORMAT, version: 1, attempts: merged(attempts) };
}
