import { exerciseSchema } from '../../../src/course/exercise-schema.ts';
import { type ExerciseDefinition, markingOf, openExercise } from '../../../src/grader/index.ts';
import { type Rig, readRig } from '../../../src/solver/index.ts';
import { mustRead } from '../../solver/document/trial.ts';

const upright = [0, 0, 0, 1];
const tilted = [0, Math.SQRT1_2, 0, Math.SQRT1_2];
const bone = (name: string, parent: string | null, role: string, base: number[], more: object = {}) => ({
  name,
  parent,
  role,
  rest: { base, turn: upright, length: 0.3 },
  ...more,
});

/** A quay on which every kind of link, input and output stands, so that every mistake can be made in it. */
export const fitting: Rig = mustRead(
  readRig({
    format: 'counterpose/rig',
    version: 1,
    bones: [
      bone('quay', null, 'control', [0, 0, 0], { locks: { size: [true, true, true] } }),
      bone('kite', null, 'control', [0, 1, 2], {
        switches: [
          { name: 'together', min: 0, max: 1, default: 0, sliding: true },
          { name: 'lamp', min: 0, max: 1, default: 0 },
        ],
      }),
      bone('vane_left', 'quay', 'helper', [0.3, 1, 0], {
        links: [
          {
            name: 'watch',
            kind: 'aim',
            target: { bone: 'kite' },
            up: { axis: '+y', toward: { direction: [0, 1, 0] } },
          },
          { name: 'keep', kind: 'limit', yaw: [-30, 80], cone: 70, move: { min: [0, 0, 0], max: [0, 0, 0] } },
        ],
      }),
      bone('vane_right', 'quay', 'helper', [-0.3, 1, 0], {
        links: [{ name: 'half', kind: 'share', source: 'vane_left', fraction: 0.5 }],
      }),
      bone('peg', 'quay', 'helper', [0.2, 0, 0.1]),
      bone('boom', 'quay', 'helper', [1, 1, 0]),
      bone('jib', 'boom', 'helper', [1, 1, 0.3], {
        attach: 'tip',
        links: [{ name: 'fetch', kind: 'reach', target: { bone: 'kite' }, pole: { bone: 'quay', at: 1 } }],
      }),
      bone('gull', null, 'skin', [0, 2, 0], {
        rest: { base: [0, 2, 0], turn: tilted, length: 0.2 },
        links: [
          { name: 'along', kind: 'follow', source: 'kite', channels: ['move'], offset: 'keep' },
          { name: 'about', kind: 'follow', source: 'quay', channels: ['turn', 'size'] },
        ],
      }),
      bone('rider', null, 'helper', [0, 1, 2.5], {
        links: [{ name: 'ride', kind: 'follow', source: 'kite', offset: 'keep' }],
      }),
      bone('feather', 'rider', 'helper', [0, 1, 2.6]),
      bone('gauge', 'quay', 'guide', [0, 0.5, 0], {
        links: [{ name: 'stretch', kind: 'span', target: { bone: 'kite' } }],
      }),
    ],
    drivers: [
      {
        name: 'let_go',
        inputs: [{ from: { switch: 'kite.together' } }],
        map: {
          keys: [
            [0, 1],
            [1, 0],
          ],
        },
        output: { bone: 'vane_left', link: 'watch', field: 'weight' },
      },
      {
        name: 'nod',
        inputs: [
          { from: { turn: { bone: 'vane_left', axis: 'y' } } },
          { from: { shift: { bone: 'boom', axis: 'x' } }, times: 2 },
          { from: { gap: [{ bone: 'vane_left' }, { bone: 'quay' }] } },
        ],
        map: {
          keys: [
            [0, 0],
            [90, 45],
          ],
          beyond: 'extend',
        },
        output: { bone: 'feather', channel: 'turn.x' },
      },
    ],
  }),
);

/** Without the span, beside which a parent and a follow are not the same. */
export const spanless: Rig = { ...fitting, bones: fitting.bones.filter(({ name }) => name !== 'gauge') };

/** A small exercise: point the vane at the kite, wherever it flies. Parts of it may be given otherwise. */
export function smallExercise(more: object = {}): ExerciseDefinition {
  const start = {
    format: 'counterpose/rig',
    version: 1,
    bones: [
      bone('quay', null, 'control', [0, 0, 0]),
      bone('kite', null, 'control', [0, 1, 2]),
      bone('vane', 'quay', 'helper', [0, 1, 0]),
    ],
  };
  const aimed = { bones: { vane: { links: { watch: { kind: 'aim', target: { bone: 'kite' } } } } } };
  return exerciseSchema.parse({
    format: 'counterpose/exercise',
    version: 1,
    id: 'small-vane',
    lesson: '3.1',
    title: 'A small vane',
    kind: 'build',
    graded: false,
    skills: ['aim'],
    task: 'Make the vane point at the kite.',
    why: 'It has to be seen.',
    start,
    kept: ['quay', 'kite', 'vane'].map((name) => ({
      bone: name,
      fields: ['parent', 'role', 'rest', 'attach', 'inherits', 'turnOrder', 'locks'],
    })),
    parts: [],
    inputs: [
      { id: 'aside', bone: 'kite', channel: 'move.x', min: -2, max: 2 },
      { id: 'up', bone: 'kite', channel: 'move.y', min: -1, max: 1 },
      { id: 'yaw', bone: 'quay', channel: 'turn.y', min: -60, max: 60 },
    ],
    keepOut: [],
    requirements: [
      {
        id: 'points',
        kind: 'aims-at',
        bone: 'vane',
        target: { bone: 'kite' },
        allowed: 1,
        says: 'The vane points at the kite.',
      },
      { id: 'answers', kind: 'answers-to', bone: 'vane', input: 'aside', by: 'turn', allowed: 10, says: 'It answers.' },
      {
        id: 'stays',
        kind: 'holds-still',
        bone: 'vane',
        moving: ['aside', 'up'],
        by: 'move',
        allowed: 700,
        says: 'It stays on its post.',
      },
      { id: 'length', kind: 'keeps-size', bone: 'vane', allowed: 1, says: 'It keeps its length.' },
      { id: 'level', kind: 'roll-within', bone: 'vane', toward: 'quay', allowed: 60, says: 'It does not roll over.' },
      { id: 'given', kind: 'kept', allowed: 0, says: 'What was given stays.' },
      { id: 'runs', kind: 'evaluates', allowed: 0, says: 'It evaluates.' },
    ],
    references: [
      { id: 'aim', says: 'An aim.', edit: aimed },
      {
        id: 'pointer',
        says: 'A helper aims, the vane follows its turn.',
        edit: {
          bones: {
            pointer: {
              parent: 'quay',
              role: 'helper',
              rest: { base: [0, 1, 0], turn: upright, length: 0.1 },
              links: { watch: { kind: 'aim', target: { bone: 'kite' } } },
            },
            vane: { links: { after: { kind: 'follow', source: 'pointer', channels: ['turn'] } } },
          },
        },
      },
    ],
    wrongTurns: [
      {
        id: 'reversed',
        says: 'The axis is reversed.',
        tells: 'It turns its back.',
        from: 'aim',
        edit: { bones: { vane: { links: { watch: { axis: '-z' } } } } },
        misses: ['points'],
      },
      {
        id: 'sideways',
        says: 'Another axis.',
        tells: 'It looks aside.',
        from: 'aim',
        edit: { bones: { vane: { links: { watch: { axis: '+x' } } } } },
        misses: ['points'],
      },
      {
        id: 'half',
        says: 'At half weight.',
        tells: 'It goes half way.',
        from: 'aim',
        edit: { bones: { vane: { links: { watch: { weight: 0.5 } } } } },
        misses: ['points'],
      },
    ],
    freeChoices: [{ says: 'A helper may stand elsewhere.', bone: '*', fields: ['rest', 'parent'] }],
    hints: [],
    structures: [{ id: 'drawn', says: 'as drawn' }],
    sizes: [1],
    ...more,
  }) as unknown as ExerciseDefinition;
}

export const markingOfSmall = (more: object = {}) =>
  markingOf(openExercise(smallExercise(more), { edition: 'e', seed: 0 }));
