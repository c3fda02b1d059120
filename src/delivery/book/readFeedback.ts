import { readJson } from '../../solver/document/json.ts';
import { type Reader, reading } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { list, needed, record } from '../../solver/document/structures.ts';
import { boolean, exactly, finite, numberFrom, text } from '../../solver/document/values.ts';
import type { Feedback } from './feedback.ts';

const anything: Reader<unknown> = (value) => value;
const orNull =
  <T>(read: Reader<T>): Reader<T | null> =>
  (value, known) =>
    value === null ? null : read(value, known);
const share = numberFrom(0, 1);

type Exercise = Feedback['exercises'][number];
type Missed = Exercise['missed'][number];
type Said = Feedback['says'][number];

const feedback = record<Feedback>('feedback', {
  format: needed(exactly('counterpose/feedback')),
  version: needed(exactly(1)),
  assignment: needed(record<Feedback['assignment']>('an assignment', { id: needed(text), title: needed(text) })),
  learner: needed(text),
  mark: needed(share),
  passed: needed(boolean),
  receipt: needed(orNull(text)),
  exercises: needed(
    list(
      'exercises',
      record<Exercise>('an exercise', {
        exercise: needed(text),
        mark: needed(share),
        byHand: needed(boolean),
        seed: needed(orNull(finite)),
        missed: needed(
          list(
            'requirements',
            record<Missed>('a requirement', {
              id: needed(text),
              measured: needed(orNull(finite)),
              allowed: needed(finite),
              unit: needed(text),
              counterpose: needed(anything),
            }),
          ),
        ),
      }),
    ),
  ),
  says: needed(list('comments', record<Said>('a comment', { exercise: needed(orNull(text)), says: needed(text) }))),
});

/** Reads the file that a learner got back. */
export function readFeedbackText(json: string): Reading<Feedback> {
  const parsed = readJson(json);
  return parsed.ok ? reading(() => feedback(parsed.value, null)) : parsed;
}
