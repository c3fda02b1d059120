import { readJson } from '../../solver/document/json.ts';
import { type Reader, reading, refuseValue } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { list, needed, optional, record } from '../../solver/document/structures.ts';
import { exactly, text } from '../../solver/document/values.ts';
import type { ChainStep, Submission } from './submission.ts';

/** The largest file that is read: a learner's whole work. */
export const LARGEST_SUBMISSION = 16 * 1024 * 1024;
const MOST_ANSWERS = 1000;
const MOST_STEPS = 20_000;

const anything: Reader<unknown> = (value) => value;
const hash: Reader<string> = (value) =>
  typeof value === 'string' && /^[0-9a-f]{64}$/.test(value) ? value : refuseValue(value, '64 hexadecimal digits');

/** A learner's code: on one line, since it is part of what decides the variant. */
export const learnerCode: Reader<string> = (value) =>
  typeof value === 'string' && /^[^\n\r]{1,128}$/.test(value) && value.trim() === value
    ? value
    : refuseValue(value, 'a learner’s code: 1 to 128 characters on one line, no space at its ends');

const submission = record<Submission>('a submission', {
  format: needed(exactly('counterpose/submission')),
  version: needed(exactly(1)),
  assignment: needed(text),
  learner: needed(learnerCode),
  answers: needed(list('answers', anything, { most: MOST_ANSWERS })),
  chain: optional(
    list(
      'steps',
      record<ChainStep>('a step', {
        at: needed(text),
        exercise: needed(text),
        answer: needed(hash),
        before: needed(hash),
      }),
      { most: MOST_STEPS },
    ),
  ),
});

/** Reads a submission; its answers are left as they are until they are graded. */
export const readSubmission = (value: unknown): Reading<Submission> => reading(() => submission(value, null));

export function readSubmissionText(json: string): Reading<Submission> {
  if (json.length > LARGEST_SUBMISSION) {
    const found = `a text of ${json.length} characters`;
    return { ok: false, refusal: { place: '', found, expected: `at most ${LARGEST_SUBMISSION}` } };
  }
  const parsed = readJson(json);
  return parsed.ok ? readSubmission(parsed.value) : parsed;
}
