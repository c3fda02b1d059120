import { describe, expect, test } from 'vitest';
import { editRig } from '../../src/grader/exercise/editRig.ts';
import { grade, messageOf } from '../../src/grader/index.ts';
import { type Rig, readRig } from '../../src/solver/index.ts';
import { answerTo, exerciseFor, markingFor } from '../support/exercises.ts';

const marking = markingFor('two-vanes-one-holder');
const { exercise } = marking;
const reference = exercise.references[0]!;

function edited(rig: Rig, edit: Record<string, unknown>): Rig {
  const reading = readRig(editRig(rig, edit));
  if (!reading.ok) throw new Error(`${reading.refusal.place}: ${reading.refusal.found}`);
  return reading.value;
}

const gradeRig = (rig: Rig, parts = {}) => grade(marking, answerTo(exercise, rig, parts));
describe('a mark', () => {
  test('is 1 for a reference, with every requirement met', () => {
    const result = gradeRig(reference.rig);
    expect(result.requirements.filter(({ status }) => status !== 'met')).toEqual([]);
    expect([result.mark, result.passed]).toEqual([1, true]);
  });

  test('is 0 for the untouched start', () => {
    const result = gradeRig(exercise.start);
    expect([result.mark, result.passed]).toEqual([0, false]);
  });

  test('is the same, to the bit, each time', () => {
    const wrong = exercise.wrongTurns[0]!;
    expect(JSON.stringify(gradeRig(wrong.rig))).toBe(JSON.stringify(gradeRig(wrong.rig)));
  });

  test('is the share of what is met, by weight, where only one side is built', () => {
    const side = exercise.wrongTurns.find(({ id }) => id.includes('one-side')) ?? exercise.wrongTurns[1]!;
    const result = gradeRig(side.rig, side.parts);
    const earning = result.requirements.filter(({ gate }) => !gate);
    const met = earning.filter(({ status }) => status === 'met').reduce((sum, { weight }) => sum + weight, 0);
    const all = earning.reduce((sum, { weight }) => sum + weight, 0);
    const gatesHold = result.requirements.every(({ gate, status }) => !gate || status === 'met');
    expect(result.mark).toBe(gatesHold ? met / all : 0);
    expect(result.passed).toBe(false);
  });
});

describe('a gate', () => {
  test('that is broken takes the whole mark', () => {
    const given = exercise.kept[0]!.bone;
    const moved = edited(reference.rig, { bones: { [given]: { rest: { length: 9 } } } });
    const result = gradeRig(moved);
    const kept = result.requirements.find(({ kind }) => kind === 'kept')!;
    expect([kept.gate, kept.status, result.mark]).toEqual([true, 'missed', 0]);
    expect(messageOf(exercise, kept)).toContain(`rest of ${given}`);
  });
});

describe('a part that nothing stands for', () => {
  test('is asked for by what it is', () => {
    const made = exercise.parts.find(({ given, is }) => !given && is === 'bone')!;
    const result = gradeRig(reference.rig, { [made.id]: 'no_such_bone' });
    const missed = result.requirements.filter(({ cause }) => cause?.why === 'unbound');
    expect(missed.length).toBeGreaterThan(0);
    for (const one of missed) expect(one).toMatchObject({ status: 'missed', measured: null, counterpose: null });
    expect(messageOf(exercise, missed[0]!)).toBe(
      `Which bone is ${made.says}? Call it ${made.name}, or choose which it is.`,
    );
  });

  test('may be any bone that does what is asked', () => {
    const made = exercise.parts.find(({ given, is }) => !given && is === 'bone')!;
    const text = JSON.stringify(reference.rig).replaceAll(`"${made.name}"`, '"gull_feather"');
    const result = gradeRig(JSON.parse(text) as Rig, { [made.id]: 'gull_feather' });
    expect([result.mark, result.passed]).toEqual([1, true]);
  });
});

describe('a cycle', () => {
  const [first, second] = exercise.parts.filter(({ is }) => is === 'bone');
  const follow = (source: string) => ({ links: { circle: { kind: 'follow', source } } });
  const circular = edited(reference.rig, {
    bones: { [first!.name]: follow(second!.name), [second!.name]: follow(first!.name) },
  });
  const result = gradeRig(circular);

  test('is graded: the gate is missed, the mark is 0', () => {
    expect(result.requirements.find(({ kind }) => kind === 'evaluates')).toMatchObject({
      gate: true,
      status: 'missed',
    });
    expect(result.mark).toBe(0);
  });

  test('leaves behaviour unchecked', () => {
    const behaviour = result.requirements.find(({ kind }) => kind === 'aims-at')!;
    expect(behaviour).toMatchObject({ status: 'not-checked', measured: null });
  });
});

describe('another edition', () => {
  test('is told, and graded all the same', () => {
    const result = grade(marking, { ...answerTo(exercise, reference.rig), edition: 'older' });
    expect(result.flags).toEqual(['edition-differs']);
    expect(result.mark).toBe(1);
  });
});

describe('every variant of an exercise', () => {
  test.each([1, 2, 3, 4, 5, 6, 7])('seed %i has parts, inputs and references of its own that pass', (seed) => {
    const variant = exerciseFor('one-vane', seed);
    const passes = variant.references.map(
      ({ rig, parts }) => grade(markingFor('one-vane', seed), answerTo(variant, rig, parts)).passed,
    );
    expect(passes).toEqual(variant.references.map(() => true));
  });
});
