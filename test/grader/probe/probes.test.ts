import { describe, expect, test } from 'vitest';
import { type BoundInput, settable } from '../../../src/grader/probe/boundInput.ts';
import { fillProbes } from '../../../src/grader/probe/fill.ts';
import { ladder } from '../../../src/grader/probe/ladder.ts';
import { packerFor } from '../../../src/grader/probe/packValues.ts';
import { poseOf } from '../../../src/grader/probe/pose.ts';
import { hunt } from '../../../src/grader/probe/search.ts';
import { subjectOf } from '../../../src/grader/subject.ts';
import { packPose } from '../../../src/solver/index.ts';
import { exerciseFor } from '../../support/exercises.ts';

const input = (id: string, more: Partial<BoundInput> = {}): BoundInput => ({
  id,
  min: -1,
  max: 2,
  rest: 0,
  bone: 'kite',
  channel: 'move',
  component: 0,
  switch: null,
  range: null,
  stuck: null,
  ...more,
});

describe('the ladder', () => {
  const inputs = [input('x'), input('y'), input('s', { channel: 'switch', min: 0, max: 1 })];
  const rungs = ladder(inputs).map((probe) => [...probe]);

  test('begins at rest and moves one input, then two', () => {
    const moved = rungs.map((probe) => probe.filter((value) => value !== 0).length);
    expect(moved).toEqual([...moved].sort());
    expect(rungs[0]).toEqual([0, 0, 0]);
    expect(rungs[1]).toEqual([2, 0, 0]);
  });

  test('holds every pair of ends under the other end of every switch', () => {
    for (const x of [-1, 2]) for (const y of [-1, 2]) expect(rungs).toContainEqual([x, y, 1]);
  });
});

describe('the fill', () => {
  test('stays in range, is told apart by its seed, and leaves no eighth of any range empty', () => {
    const inputs = [input('x'), input('y'), input('z')];
    const probes = fillProbes(inputs, 200, 5);
    expect(fillProbes(inputs, 200, 5)).toEqual(probes);
    expect(fillProbes(inputs, 200, 6)).not.toEqual(probes);
    for (const k of [0, 1, 2]) {
      const eighths = new Set(probes.map((probe) => Math.floor((8 * (probe[k]! + 1)) / 3)));
      expect([...eighths].sort()).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    }
  });
});

describe('the hunt', () => {
  test('climbs to a peak between the probes and leaves its start as it was', () => {
    const inputs = [input('x'), input('y')];
    const peak = ([x, y]: Float64Array) => -((x! - 1.3) ** 2) - (y! + 0.4) ** 2;
    const from = new Float64Array([0, 0]);
    const found = hunt(from, [0, 1], inputs, peak, 1);
    expect([...from]).toEqual([0, 0]);
    expect(Math.abs(found.values[0]! - 1.3)).toBeLessThan(0.02);
    expect(Math.abs(found.values[1]! + 0.4)).toBeLessThan(0.02);
  });
});

describe('a value as the rig can take it', () => {
  const range = { name: 's', min: 0, max: 1, default: 0, sliding: true };
  test.each([
    ['within the range of the switch', input('s', { range }), 1.5, 1],
    ['at the nearer end where it does not slide', input('s', { range: { ...range, sliding: false } }), 0.6, 1],
    ['at its lower end at a tie', input('s', { range: { ...range, sliding: false } }), 0.5, 0],
    ['at rest where it is locked', input('x', { stuck: 'locked' }), 1, 0],
  ])('%s', (_, bound, asked, taken) => {
    expect(settable(bound, asked)).toBe(taken);
  });
});

describe('packing input values', () => {
  test('gives the same bits as packing the pose document that is shown', () => {
    const exercise = exerciseFor('let-go');
    const prepared = subjectOf(exercise, exercise.references[0]!.rig);
    if (!prepared.ok) throw new Error('a reference evaluates');
    const { subject } = prepared;
    const packer = packerFor(subject.program, subject.inputs);
    const room = packer.room();
    for (const values of fillProbes(subject.inputs, 100, 3)) {
      packer.pack(values, room);
      const packed = packPose(subject.program, poseOf(subject, values));
      expect(room.packed.slice(0, packed.length)).toEqual(packed);
    }
  });
});
