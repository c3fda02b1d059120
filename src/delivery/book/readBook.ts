import { z } from '../../course/zod.ts';
import { readJson } from '../../solver/document/json.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import { inWords } from '../../solver/document/words.ts';
import type { Book } from './book.ts';

const text = z.string();
const share = z.number().min(0).max(1);
const refusal = z.strictObject({ place: text, found: text, expected: text });
const missed = z.strictObject({
  id: text,
  status: z.enum(['met', 'missed', 'not-checked']),
  gate: z.boolean(),
  measured: z.number().nullable(),
  allowed: z.number(),
  unit: text,
  counterpose: z.looseObject({}).nullable(),
  diagnosis: text.nullable(),
});
const answer = z.discriminatedUnion('outcome', [
  z.strictObject({ outcome: z.literal('unusable'), exercise: text.nullable(), refusal }),
  z.strictObject({
    outcome: z.literal('graded'),
    exercise: text,
    kind: z.enum(['build', 'repair', 'predict', 'pose', 'order', 'shape']),
    seed: z.number(),
    attempt: z.number(),
    mark: share,
    passed: z.boolean(),
    flags: z.array(text),
    met: z.array(text),
    missed: z.array(missed),
  }),
]);
const marked = z.strictObject({
  assignment: text,
  learner: text,
  exercises: z.array(
    z.strictObject({
      exercise: text,
      weight: z.number().positive(),
      mark: share,
      passed: z.boolean(),
      counted: z.number().int().min(0).nullable(),
      answers: z.array(answer),
    }),
  ),
  worth: share,
  late: z.strictObject({
    state: z.enum(['unknown', 'early', 'in-time', 'late', 'too-late']),
    days: z.number(),
    taken: share,
  }),
  mark: share,
  passed: z.boolean(),
  chain: z.enum(['none', 'whole', 'broken', 'lacks-answers']),
  receipt: text,
  flags: z.array(text),
});
const about = { id: text, at: text, by: text };
const note = z.discriminatedUnion('kind', [
  z.strictObject({ ...about, kind: z.literal('comment'), exercise: text.nullable(), says: text }),
  z.strictObject({ ...about, kind: z.literal('override'), exercise: text, mark: share, reason: text }),
  z.strictObject({
    ...about,
    kind: z.literal('rubric'),
    line: text,
    mark: z.number().min(0),
    outOf: z.number().positive(),
    says: text,
  }),
]);
const learner = z
  .strictObject({
    learner: text,
    name: text.nullable(),
    handedIn: z.array(z.strictObject({ path: text, collected: text.nullable(), marked })),
    counted: z.number().int().min(0).nullable(),
    flags: z.array(text),
    notes: z.array(note),
  })
  .refine(({ counted, handedIn }) => counted === null || counted < handedIn.length, 'counts what was not handed in');

const book = z.strictObject({
  format: z.literal('counterpose/markbook'),
  version: z.literal(1),
  assignment: z.strictObject({ id: text, title: text, signedBy: text.nullable(), passMark: share }),
  learners: z.array(learner),
  strays: z.array(z.strictObject({ path: text, refusal })),
});

/** Reads a mark book that was saved. */
export function readBook(value: unknown): Reading<Book> {
  const parsed = book.safeParse(value);
  if (parsed.success) return { ok: true, value: parsed.data as unknown as Book };
  const { path, message } = parsed.error.issues[0]!;
  const found = inWords(path.reduce<unknown>((inner, key) => (inner as Record<PropertyKey, unknown>)?.[key], value));
  return { ok: false, refusal: { place: path.map((key) => `/${String(key)}`).join(''), found, expected: message } };
}

export function readBookText(json: string): Reading<Book> {
  const parsed = readJson(json);
  return parsed.ok ? readBook(parsed.value) : parsed;
}
