import { readJson } from '../../solver/document/json.ts';
import { type Reader, reading, refuse, refuseValue, within } from '../../solver/document/reader.ts';
import type { Reading, Refusal } from '../../solver/document/refusal.ts';
import { dictionary, fieldOf, list, needed, optional, record } from '../../solver/document/structures.ts';
import { exactly, name, number, numberFrom, text } from '../../solver/document/values.ts';
import { quoted } from '../../solver/document/words.ts';
import type { AssignedExercise, Assignment, LateRule } from './assignment.ts';
import { checkTolerances } from './checkTolerances.ts';
import { publicKey, thumbprintOf } from './keys.ts';
import { carried } from './readCarried.ts';
import { isSignedBy, partsOf } from './sign.ts';
import { millisecondsOf, time } from './time.ts';

/** An assignment with who signed it: the thumbprint of the key, null where nobody did. */
export interface OpenedAssignment {
  assignment: Assignment;
  signedBy: string | null;
}

/** The largest file that is read. An exercise with its meshes is some 100 kB. */
const LARGEST = 16 * 1024 * 1024;
const MOST_EXERCISES = 100;

const share = numberFrom(0, 1);
const positive = number('a number above 0', (value) => value > 0);
const anything: Reader<unknown> = (value) => value;

const plain = record<Assignment>('an assignment', {
  format: needed(exactly('counterpose/assignment')),
  version: needed(exactly(1)),
  id: needed(name),
  title: needed(text),
  edition: needed(text),
  exercises: needed(
    list(
      'exercises',
      record<AssignedExercise>('an assigned exercise', {
        id: needed(text),
        weight: needed(positive),
        tolerances: optional(dictionary('what is allowed, by requirement', () => positive)),
      }),
      { least: 1, most: MOST_EXERCISES },
    ),
  ),
  passMark: needed(share),
  opens: optional(time),
  due: optional(time),
  late: optional(record<LateRule>('what late work costs', { perDay: needed(share), until: optional(time) })),
  attempts: optional(number('a whole number from 1', (value) => Number.isInteger(value) && value >= 1)),
  house: optional(anything),
  key: optional(publicKey),
  carried: needed(list('carried exercises', carried, { most: MOST_EXERCISES })),
});

/** Reads an assignment as plain data: every exercise carried, every tolerance for a requirement that there is. */
export const readAssignment = (value: unknown): Reading<Assignment> => reading(() => checked(plain(value, null)));

function checked(assignment: Assignment): Assignment {
  const { exercises, opens, due, late } = assignment;
  const ids = assignment.carried.map(({ definition }) => definition.id);
  const twice = ids.findIndex((id, i) => ids.indexOf(id) < i);
  if (twice >= 0) refuse(`${quoted(ids[twice]!)} a second time`, 'each exercise once', ['carried', twice]);
  const carriedById = new Map(assignment.carried.map((one) => [one.definition.id, one]));
  exercises.forEach((exercise, i) => {
    const { id } = exercise;
    within(['exercises', i], () => {
      const one = carriedById.get(id);
      if (!one) return refuse(quoted(id), 'an exercise that the assignment carries', ['id']);
      if (exercises.findIndex((other) => other.id === id) < i)
        refuse(`${quoted(id)} a second time`, 'each exercise once', ['id']);
      checkTolerances(exercise, one);
    });
  });
  within(['due'], () => isAfter(opens, due) || refuseValue(due, `a time after it opens, ${opens}`));
  within(['late'], () => !late || due !== undefined || refuseValue(late, 'nothing, where there is no due time'));
  within(
    ['late', 'until'],
    () => isAfter(due, late?.until) || refuseValue(late?.until, `a time after it is due, ${due}`),
  );
  return assignment;
}

const isAfter = (first: string | undefined, second: string | undefined): boolean =>
  first === undefined || second === undefined || millisecondsOf(first) < millisecondsOf(second);

/** Reads an assignment from a file or an address: signed, or plain JSON. A signature that is not right is refused. */
export function readAssignmentText(text: string): Reading<OpenedAssignment> {
  if (text.length > LARGEST) return refused(`a text of ${text.length} characters`, `at most ${LARGEST}`);
  const parts = partsOf(text);
  if (!parts) return opened(text, null);
  const header = jsonOf(parts.header);
  const algorithm = header.ok ? fieldOf(header.value, 'alg') : undefined;
  if (algorithm !== 'EdDSA') return refused(`a signature of kind ${quoted(String(algorithm))}`, 'one of kind "EdDSA"');
  if (header.ok && fieldOf(header.value, 'crit') !== undefined) return refused('a header with "crit"', 'none');
  const key = readKey(parts.payload);
  if (key === null) return refused('a signed text without the key of who signed it', 'an assignment with its key');
  if (!isSignedBy(parts, key)) return refused('a signature that does not fit', 'the assignment as it was signed');
  return opened(utf8(parts.payload), true);
}

function readKey(payload: Uint8Array): string | null {
  const json = jsonOf(payload);
  const x = json.ok ? fieldOf(fieldOf(json.value, 'key'), 'x') : undefined;
  return typeof x === 'string' ? x : null;
}

/** Bytes that are no UTF-8 become a text that is no JSON. */
const utf8 = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
const jsonOf = (bytes: Uint8Array): Reading<unknown> => readJson(utf8(bytes));

function opened(text: string, isSigned: true | null): Reading<OpenedAssignment> {
  const json = readJson(text);
  if (!json.ok) return json;
  const read = readAssignment(json.value);
  if (!read.ok) return read;
  const { key } = read.value;
  return { ok: true, value: { assignment: read.value, signedBy: isSigned && key ? thumbprintOf(key) : null } };
}

function refused(found: string, expected: string): { ok: false; refusal: Refusal } {
  return { ok: false, refusal: { place: '', found, expected } };
}
