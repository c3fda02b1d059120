import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Reading, Rig } from '../../../src/solver/index.ts';
import { readPose, readPoseText, readRig, readRigText } from '../../../src/solver/index.ts';
import { seeded } from '../../support/random.ts';
import { randomPose, randomRig } from '../../support/rigs.ts';
import { mutated } from './mutate.ts';
import { mustRead } from './trial.ts';

/** COUNTERPOSE_FUZZ says how many cases each property is tried on. */
const numRuns = Number(process.env.COUNTERPOSE_FUZZ ?? 1000);
const settings = { seed: 20260101, numRuns };
vi.setConfig({ testTimeout: 10_000 + 10 * numRuns });

/** A refusal has a place that is a JSON Pointer, and words that are short and hold nothing unseen. */
function expectSound(reading: Reading<unknown>): void {
  if (reading.ok) return;
  const { place, found, expected } = reading.refusal;
  expect(place).toMatch(/^(\/([^~]|~[01])*)*$/su);
  expect(place.length).toBeLessThan(400);
  for (const words of [found, expected]) {
    expect(words).not.toBe('');
    expect(words.length).toBeLessThan(400);
    expect(words).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
    expect(words).not.toMatch(/undefined|\[object/);
  }
}

/** What is accepted reads again to the same document, from the value and from its text. */
function expectRepeatable<T>(
  reading: Reading<T>,
  read: (value: unknown) => Reading<T>,
  readText: (text: string) => Reading<T>,
) {
  if (!reading.ok) return;
  const text = JSON.stringify(reading.value);
  expect(JSON.stringify(mustRead(read(reading.value)))).toBe(text);
  expect(JSON.stringify(mustRead(readText(text)))).toBe(text);
}

function expectHandled(value: unknown): void {
  const reading = readRig(value);
  expectSound(reading);
  expectRepeatable(reading, readRig, readRigText);
}

test('any value', () => {
  fc.assert(
    fc.property(fc.anything({ withNullPrototype: true, withSparseArray: true, withBigInt: true }), expectHandled),
    settings,
  );
});

test('any JSON in the place of any field', () => {
  const fields = fc.dictionary(
    fc.constantFrom('format', 'version', 'title', 'bones', 'drivers', 'mesh', 'other'),
    fc.oneof(fc.constantFrom('counterpose/rig', 1, []), fc.jsonValue()),
  );
  fc.assert(fc.property(fields, expectHandled), settings);
});

test('any text', () => {
  const text = fc.oneof(fc.string({ unit: 'binary' }), fc.json(), fc.string({ unit: 'grapheme' }));
  fc.assert(
    fc.property(text, (json) => expectSound(readRigText(json))),
    settings,
  );
});

test('rigs with something wrong', () => {
  const counts = { refused: 0, read: 0 };
  const trial = (seed: number) => {
    const random = seeded(seed);
    const rig = randomRig(random, { mesh: true, oddNames: true, bones: 6 });
    const value = mutated(random, rig);
    const reading = readRig(value);
    counts[reading.ok ? 'read' : 'refused']++;
    expectHandled(value);
  };
  fc.assert(fc.property(fc.integer(), trial), settings);
  // Both happen often, so neither half of the property is empty.
  expect(counts.refused).toBeGreaterThan(numRuns / 2);
  expect(counts.read).toBeGreaterThan(numRuns / 20);
});

test('texts of rigs with a piece cut out or put in', () => {
  const pieces = [
    '"',
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '\\',
    '\n',
    '\u202e',
    '1e999',
    'null',
    '"__proto__":{},',
    '"name":"x",',
  ];
  fc.assert(
    fc.property(fc.integer(), fc.nat(), fc.nat(3), fc.constantFrom('', ...pieces), (seed, at, cut, piece) => {
      const text = JSON.stringify(randomRig(seeded(seed), { bones: 3 }));
      const start = at % text.length;
      expectSound(readRigText(text.slice(0, start) + piece + text.slice(start + cut)));
    }),
    settings,
  );
});

test('poses with something wrong', () => {
  const trial = (seed: number) => {
    const random = seeded(seed);
    const rig: Rig = mustRead(readRig(randomRig(random, { oddNames: true, bones: 5 })));
    const reading = readPose(mutated(random, randomPose(random, rig)), rig);
    expectSound(reading);
    expectRepeatable(
      reading,
      (value) => readPose(value, rig),
      (text) => readPoseText(text, rig),
    );
  };
  fc.assert(fc.property(fc.integer(), trial), settings);
});

test('random rigs and poses are readable, and read to themselves', () => {
  const trial = (seed: number) => {
    const random = seeded(seed);
    const rig = randomRig(random, { mesh: seed % 2 === 0, oddNames: seed % 3 === 0, cycles: seed % 5 === 0 });
    expect(JSON.stringify(mustRead(readRig(rig)))).toBe(JSON.stringify(rig));
    const pose = randomPose(random, rig);
    expect(JSON.stringify(mustRead(readPose(pose, rig)))).toBe(JSON.stringify(pose));
  };
  fc.assert(fc.property(fc.integer(), trial), settings);
});
