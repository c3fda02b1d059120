import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { exerciseIds, readExerciseFile } from '../../src/course/exercise-files.ts';
import { exerciseSchema } from '../../src/course/exercise-schema.ts';
import {
  type ExerciseDefinition,
  grade,
  markingOf,
  messageOf,
  openExercise,
  readAnswer,
  readAnswerText,
} from '../../src/grader/index.ts';
import { mutated } from '../solver/document/mutate.ts';
import { contentDir, exerciseFor, markingFor } from '../support/exercises.ts';
import { seeded } from '../support/random.ts';
import { smallExercise } from './audit/fitting.ts';

/** COUNTERPOSE_FUZZ says how many cases are tried; a few thousand in all where it does not. */
const numRuns = Number(process.env.COUNTERPOSE_FUZZ ?? 1200);
const settings = { seed: 20260402, numRuns };
/** No single case may take longer. Grading proves some thousands of poses; the machine may be busy. */
const CASE_MS = 20_000;
vi.setConfig({ testTimeout: 60_000 + 40 * numRuns });

const small = markingOf(openExercise(smallExercise(), { edition: 'e', seed: 0 }));
const answerWith = (rig: unknown) => ({ ...answerHead, rig });
const answerHead = { format: 'counterpose/answer', version: 1, exercise: 'small-vane', edition: 'e', seed: 0 };
const askedOf = (id: string) => (id === 'small-vane' ? small.exercise : null);

/** Fails where anything was written onto the prototypes that all objects share. */
const before = prototypes();
function prototypes(): string {
  return [Object.prototype, Array.prototype, Function.prototype, String.prototype]
    .map((prototype) => Object.getOwnPropertyNames(prototype).join())
    .join('\n');
}

function within<T>(work: () => T): T {
  const started = performance.now();
  const result = work();
  expect(performance.now() - started).toBeLessThan(CASE_MS);
  expect(prototypes()).toBe(before);
  return result;
}

function expectSound({ place, found, expected }: { place: string; found: string; expected: string }): void {
  expect(place).toMatch(/^(\/([^~]|~[01])*)*$/su);
  for (const words of [found, expected]) {
    expect(words).not.toBe('');
    expect(words.length).toBeLessThan(600);
    expect(words).not.toMatch(/undefined|\[object/);
  }
}

/** Refused with place, found and expected, or graded with a mark and a sentence for every requirement. */
function expectHandled(value: unknown): 'refused' | 'graded' {
  const reading = within(() => readAnswer(value, askedOf));
  if (!reading.ok) {
    expectSound(reading.refusal);
    return 'refused';
  }
  const result = within(() => grade(small, reading.value));
  expect(result.mark).toBeGreaterThanOrEqual(0);
  expect(result.mark).toBeLessThanOrEqual(1);
  for (const one of result.requirements) {
    expect(messageOf(small.exercise, one)).toMatch(/\S/);
    expect(one.measured === null || typeof one.measured === 'number').toBe(true);
  }
  return 'graded';
}

test('any value in place of an answer', () => {
  const any = fc.anything({ withNullPrototype: true, withSparseArray: true, withBigInt: true });
  fc.assert(
    fc.property(any, (value) => void expectHandled(value)),
    settings,
  );
});

test('any JSON in the fields of an answer', () => {
  const fields = fc.record(
    {
      exercise: fc.constantFrom('small-vane', '__proto__', 'constructor', '../one-vane'),
      seed: fc.oneof(fc.nat(), fc.double(), fc.constantFrom(-1, 2 ** 48, '0')),
      rig: fc.oneof(fc.constant(small.exercise.references[0]!.rig), fc.jsonValue()),
      response: fc.jsonValue(),
      parts: fc.oneof(fc.dictionary(fc.string(), fc.jsonValue()), fc.jsonValue()),
      steps: fc.jsonValue(),
      attempt: fc.oneof(fc.nat(), fc.jsonValue()),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fields, (more) => void expectHandled({ ...answerHead, ...more })),
    settings,
  );
});

test('any text in place of an answer', () => {
  const text = fc.oneof(fc.string({ unit: 'binary' }), fc.json(), fc.string({ unit: 'grapheme' }));
  fc.assert(
    fc.property(text, (json) => {
      const reading = within(() => readAnswerText(json, askedOf));
      if (!reading.ok) expectSound(reading.refusal);
    }),
    settings,
  );
});

test('answers with something wrong, of which many are refused and many graded', () => {
  const counts = { refused: 0, graded: 0 };
  const rigs = [...small.exercise.references, ...small.exercise.wrongTurns].map(({ rig }) => rig);
  const trial = (seed: number) => {
    const random = seeded(seed);
    const answer = answerWith(rigs[Math.floor(random() * rigs.length)]);
    counts[expectHandled(mutated(random, answer))]++;
  };
  fc.assert(fc.property(fc.integer(), trial), settings);
  expect(counts.refused).toBeGreaterThan(numRuns / 4);
  expect(counts.graded).toBeGreaterThan(numRuns / 50);
});

test('rigs of the course with something wrong, graded by their own exercises', () => {
  const ids = exerciseIds(contentDir);
  const markings = new Map<string, ReturnType<typeof markingFor>>();
  const trial = (seed: number) => {
    const random = seeded(seed);
    const id = ids[Math.floor(random() * ids.length)]!;
    const marking = markings.get(id) ?? markingFor(id);
    markings.set(id, marking);
    const { exercise } = marking;
    const { rig, response } = exercise.references[0]!;
    const head = { ...answerHead, exercise: id, edition: exercise.edition };
    const whole = exercise.kind === 'build' || exercise.kind === 'repair' ? { ...head, rig } : { ...head, response };
    const reading = within(() => readAnswer(mutated(random, whole), (asked) => (asked === id ? exercise : null)));
    if (!reading.ok) return expectSound(reading.refusal);
    const result = within(() => grade(marking, reading.value));
    for (const one of result.requirements) expect(messageOf(exercise, one)).toMatch(/\S/);
  };
  fc.assert(fc.property(fc.integer(), trial), { ...settings, numRuns: Math.ceil(numRuns / 6) });
});

describe('exercises with something wrong', () => {
  const definitions = exerciseIds(contentDir).map((id) => readExerciseFile(contentDir, id).definition);

  test('are refused with a place by the schema, or with words by whoever opens them, or open', () => {
    const counts = { schema: 0, opening: 0, opened: 0 };
    const trial = (seed: number) => {
      const random = seeded(seed);
      const definition = definitions[Math.floor(random() * definitions.length)]!;
      const parsed = within(() => exerciseSchema.safeParse(mutated(random, definition)));
      if (!parsed.success) {
        counts.schema++;
        for (const { path, message } of parsed.error.issues)
          expect([Array.isArray(path), message === '']).toEqual([true, false]);
        return;
      }
      counts[openingOf(parsed.data as unknown as ExerciseDefinition)]++;
    };
    fc.assert(fc.property(fc.integer(), trial), { ...settings, numRuns: Math.ceil(numRuns / 3) });
    expect(counts.schema).toBeGreaterThan(numRuns / 30);
    expect(counts.opened).toBeGreaterThan(numRuns / 300);
  });

  /** What is thrown is told in words by the exercise's id or what a name is missing; never a fault of the code. */
  function openingOf(definition: ExerciseDefinition): 'opening' | 'opened' {
    try {
      within(() => openExercise(definition, { edition: 'e', seed: 0 }));
      return 'opened';
    } catch (error) {
      expect(error).toBeInstanceOf(Error);
      expect((error as Error).constructor.name, (error as Error).stack).toBe('Error');
      expect((error as Error).message).toMatch(/\S/);
      return 'opening';
    }
  }
});

test('seeds of any size open an exercise', () => {
  const trial = (n: number) => {
    const seed = n % 2 ** 48;
    expect(within(() => exerciseFor('one-vane', seed)).seed).toBe(seed);
  };
  fc.assert(fc.property(fc.maxSafeNat(), trial), { ...settings, numRuns: 50 });
});
