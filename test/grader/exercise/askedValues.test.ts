import { describe, expect, test } from 'vitest';
import type { ExerciseDefinition } from '../../../src/grader/exercise/definition.ts';
import { openExercise } from '../../../src/grader/exercise/open.ts';

/** A boom that sways to a side; what is asked is its bearing against the quay and where its end is. */
const definition = {
  format: 'counterpose/exercise',
  version: 1,
  id: 'boom',
  lesson: '1.1',
  title: 'Boom',
  kind: 'predict',
  graded: false,
  skills: ['bones-and-rest'],
  task: 'Where is the end?',
  why: 'To know.',
  start: {
    format: 'counterpose/rig',
    version: 1,
    bones: [
      { name: 'quay', parent: null, role: 'control', rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 0.1 } },
      { name: 'boom_left', parent: 'quay', role: 'skin', rest: { base: [0.3, 0, 0], turn: [0, 0, 0, 1], length: 0.5 } },
    ],
  },
  kept: [],
  parts: [],
  inputs: [],
  keepOut: [],
  requirements: [
    {
      id: 'bearing',
      kind: 'value',
      says: 'The bearing.',
      allowed: 1,
      weight: 1,
      gauge: { axis: '+x', of: 'boom_left', against: '+z', ofOther: 'quay' },
      pose: { bones: { boom_left: { move: [0.1, 0, 0], turn: { angles: [0, 20, 0] } } } },
    },
    {
      id: 'end',
      kind: 'value',
      says: 'The end.',
      allowed: 1,
      weight: 1,
      gauge: { between: { bone: 'boom_left', at: 0 }, and: { bone: 'quay', at: 0 } },
      pose: { bones: { boom_left: { move: [0.1, 0, 0], turn: { angles: [0, 20, 0] } } } },
    },
  ],
  references: [{ id: 'truth', says: 'What the rig gives.' }],
  wrongTurns: [
    {
      id: 'other-axis',
      says: 'another axis',
      tells: 'Another axis.',
      misses: ['bearing'],
      slip: { gauge: { axis: '+z', of: 'boom_left', against: '+x', ofOther: 'quay' } },
    },
    { id: 'too-far', says: 'the quay forgotten', tells: 'From the quay.', misses: ['end'], slip: { plus: 3 } },
  ],
  freeChoices: [{ says: 'A longer boom.', edit: { bones: { boom_left: { rest: { length: 0.6 } } } } }],
  hints: [],
  structures: [
    { id: 'drawn', says: 'as drawn' },
    { id: 'mirrored', says: 'mirrored', reflect: true },
  ],
  sizes: [1, 2],
} as unknown as ExerciseDefinition;

const opened = (seed: number) => openExercise(definition, { edition: 'e', seed });
const truth = (seed: number) => opened(seed).references[0]!.values!;
const slip = (seed: number, at: number) => opened(seed).wrongTurns[at]!.values!;

describe('what a prediction asks for, by variant', () => {
  test('mirrored, the same pose on the other side gives the same numbers', () => {
    expect(truth(0)).toEqual({ bearing: expect.closeTo(110, 9), end: expect.closeTo(40, 9) });
    expect(truth(1)).toEqual({ bearing: expect.closeTo(110, 9), end: expect.closeTo(40, 9) });
    expect(slip(1, 0).bearing).toBeCloseTo(slip(0, 0).bearing!, 9);
  });

  test('at twice the size the pose is twice as far, and so are a slip in centimetres and what is allowed', () => {
    expect(truth(2)).toEqual({ bearing: expect.closeTo(110, 9), end: expect.closeTo(80, 9) });
    expect(slip(0, 1)).toEqual({ bearing: expect.closeTo(113, 9), end: expect.closeTo(43, 9) });
    expect(slip(2, 1)).toEqual({ bearing: expect.closeTo(113, 9), end: expect.closeTo(86, 9) });
    expect(opened(2).requirements.map(({ allowed }) => allowed)).toEqual([1, 2]);
  });

  test('a free choice is mirrored and scaled with the rest', () => {
    const [choice] = opened(3).freeChoices;
    if (!choice || !('rig' in choice)) throw new Error('a free choice with a rig');
    expect(choice.rig.bones[1]).toMatchObject({ name: 'boom_right', rest: { base: [-0.6, 0, 0], length: 1.2 } });
  });
});
