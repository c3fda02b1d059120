import { describe, expect, test } from 'vitest';
import { auditVariant } from '../../../src/grader/audit/auditVariant.ts';
import { fails, noCounts, sumCounts } from '../../../src/grader/audit/counts.ts';
import { markingOfSmall, smallExercise } from './fitting.ts';

const OPTIONS = { samples: 50, mutants: Number.POSITIVE_INFINITY };
const without = (id: string) => ({
  requirements: smallExercise().requirements.filter((one) => one.id !== id),
});
const withAllowed = (id: string, allowed: number) => ({
  requirements: smallExercise().requirements.map((one) => (one.id === id ? { ...one, allowed } : one)),
});

describe('the audit of a sound exercise', () => {
  const { counts, findings } = auditVariant(markingOfSmall(), OPTIONS);

  test('lets every right rig pass and misses every wrong one', () => {
    expect(findings).toEqual([]);
    expect(counts).toMatchObject({ rightRefused: 0, wrongPassed: 0, undecided: 0, margins: 0 });
    expect(counts.rightTried).toBeGreaterThan(10);
    expect(counts.wrongTried).toBeGreaterThan(20);
    expect(fails(counts)).toBe(false);
  });

  test('tells what went wrong in all three wrong turns, and in mistakes that do as they do', () => {
    expect(counts.diagnosed).toBeGreaterThan(3);
    expect(counts.diagnosedRight).toBe(counts.diagnosed);
  });

  test('counts the same each time', () => {
    expect(auditVariant(markingOfSmall(), OPTIONS).counts).toEqual(counts);
  });
});

describe('an exercise that lacks a requirement', () => {
  test('leaves rigs undecided that look different and break nothing', () => {
    const { counts, findings } = auditVariant(markingOfSmall(without('given')), OPTIONS);
    expect(counts.undecided).toBeGreaterThan(0);
    expect(findings.join()).toMatch(/looks different and breaks nothing/);
    expect(fails(counts)).toBe(true);
  });

  test('has none undecided where the author calls them free', () => {
    const marked = auditVariant(markingOfSmall(without('given')), OPTIONS).findings.join();
    const open = ['quay', 'kite', 'vane', '*'].map((bone) => ({
      says: 'It may stand otherwise.',
      bone,
      fields: ['rest', 'parent', 'attach', 'inherits', 'locks', 'links', 'role', 'turnOrder'],
    }));
    const { counts } = auditVariant(markingOfSmall({ ...without('given'), freeChoices: open }), OPTIONS);
    expect(marked).not.toBe('');
    expect(counts.undecided).toBe(0);
  });
});

describe('too wide a tolerance', () => {
  test('lets a wrong turn do as it likes, which the judge cannot call wrong', () => {
    const { counts, findings } = auditVariant(markingOfSmall(withAllowed('points', 100)), OPTIONS);
    expect(findings.join()).toMatch(/wrong turn half/);
    expect(fails(counts)).toBe(true);
  });

  test('too narrow a one leaves the references no room', () => {
    const { counts } = auditVariant(markingOfSmall(withAllowed('stays', 1)), OPTIONS);
    expect(counts.rightRefused).toBeGreaterThan(0);
    expect(fails(counts)).toBe(true);
  });
});

describe('counts', () => {
  test('add up, and fail by any one right rig refused, wrong one passed, undecided or margin', () => {
    const one = { ...noCounts(), rightTried: 2, wrongTried: 3 };
    expect(sumCounts([one, one])).toEqual({ ...noCounts(), rightTried: 4, wrongTried: 6 });
    expect(fails(one)).toBe(false);
    for (const key of ['rightRefused', 'wrongPassed', 'undecided', 'margins'] as const) {
      expect(fails({ ...one, [key]: 1 })).toBe(true);
    }
  });

  test('fail by more than one counterpose in twenty that is not simple', () => {
    expect(fails({ ...noCounts(), counterposes: 20, counterposesSimple: 19 })).toBe(false);
    expect(fails({ ...noCounts(), counterposes: 20, counterposesSimple: 18 })).toBe(true);
  });
});
