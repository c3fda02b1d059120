import { describe, expect, test } from 'vitest';
import { exerciseSchema } from '../../../src/course/exercise-schema.ts';
import { checkVariant } from '../../../src/grader/exercise/checkVariant.ts';
import type { ExerciseDefinition } from '../../../src/grader/index.ts';
import { grade, markingOf, openExercise, readAnswer, responseKindOf } from '../../../src/grader/index.ts';

const rest = (base: number[], length = 0.3) => ({ base, turn: [0, 0, 0, 1], length });
const quay = {
  format: 'counterpose/rig',
  version: 1,
  bones: [
    {
      name: 'kite',
      parent: null,
      role: 'control',
      rest: rest([0, 1, 2]),
      switches: [{ name: 'near', min: 0, max: 1, default: 0, sliding: true }],
    },
    {
      name: 'vane',
      parent: null,
      role: 'skin',
      rest: rest([0, 1, 0]),
      links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }],
    },
    { name: 'tail', parent: 'vane', role: 'helper', rest: rest([0, 1, -0.3]) },
  ],
  drivers: [
    {
      name: 'let_go',
      inputs: [{ from: { switch: 'kite.near' } }],
      map: {
        keys: [
          [0, 0],
          [1, 1],
        ],
      },
      output: { bone: 'vane', link: 'watch', field: 'weight' },
    },
  ],
};

function exerciseWith(more: object) {
  const parsed = exerciseSchema.parse({
    format: 'counterpose/exercise',
    version: 1,
    id: 'on-the-quay',
    lesson: '3.1',
    title: 'On the quay',
    graded: false,
    skills: ['aim'],
    task: 'Say it.',
    why: 'It shows.',
    start: quay,
    kept: [],
    parts: [],
    inputs: [],
    keepOut: [],
    references: [],
    wrongTurns: [],
    freeChoices: [],
    hints: [],
    structures: [{ id: 'drawn', says: 'as drawn' }],
    sizes: [1],
    ...more,
  });
  const definition = parsed as unknown as ExerciseDefinition;
  return (seed = 0) => openExercise(definition, { edition: 'e', seed });
}

function marked(exercise: ReturnType<ReturnType<typeof exerciseWith>>, response: unknown) {
  const document = {
    format: 'counterpose/answer',
    version: 1,
    exercise: exercise.id,
    edition: 'e',
    seed: exercise.seed,
    response,
  };
  const reading = readAnswer(document, () => exercise);
  if (!reading.ok) return reading.refusal;
  const { mark, requirements } = grade(markingOf(exercise), reading.value);
  return { mark, diagnoses: requirements.map(({ diagnosis }) => diagnosis) };
}

describe('a prediction', () => {
  const open = exerciseWith({
    kind: 'predict',
    draw: [{ name: 'aside', from: 0.5, to: 1.5, step: 0.1 }],
    requirements: [
      {
        id: 'angle',
        kind: 'value',
        says: 'By how many degrees does the vane turn?',
        allowed: 0.5,
        gauge: { turned: 'vane' },
        pose: { bones: { kite: { move: ['$aside', 0, 0] } }, switches: { 'kite.near': 1 } },
      },
    ],
    references: [{ id: 'truth', says: 'what the rig does' }],
    wrongTurns: [
      { id: 'half', says: 'half of it', tells: 'That is half.', slip: { times: 0.5 }, misses: ['angle'] },
      { id: 'radians', says: 'radians', tells: 'That is radians.', slip: { times: Math.PI / 180 }, misses: ['angle'] },
      {
        id: 'rest',
        says: 'from the other axis',
        tells: 'From the other axis.',
        slip: { times: -1, plus: 90 },
        misses: ['angle'],
      },
    ],
  });
  const exercise = open();
  const asked = exercise.requirements[0]!;
  const aside = asked.kind === 'value' ? asked.pose!.bones!.kite!.move![0] : Number.NaN;
  const truth = (Math.atan2(aside, 2) * 180) / Math.PI;

  test('of what plain trigonometry gives is met', () => {
    expect(marked(exercise, { values: { angle: truth } })).toEqual({ mark: 1, diagnoses: [null] });
  });

  test.each([
    ['half', truth / 2],
    ['radians', (truth * Math.PI) / 180],
    ['rest', 90 - truth],
  ])('with the slip %s is told so', (id, angle) => {
    expect(marked(exercise, { values: { angle } })).toEqual({ mark: 0, diagnoses: [id] });
  });

  test('is redrawn by the seed', () => {
    const poses = [0, 1, 2, 3].map((seed) => JSON.stringify(open(seed).requirements[0]));
    expect(new Set(poses).size).toBeGreaterThan(2);
  });

  test('is sound as content, and its schema asks for one number each', () => {
    expect(checkVariant(markingOf(exercise))).toEqual([]);
    expect(responseKindOf('predict')!.schema(exercise)).toMatchObject({
      properties: { values: { required: ['angle'] } },
    });
  });

  test.each([
    [{ values: { angle: '3' } }, '/response/values/angle'],
    [{ values: {} }, '/response/values/angle'],
    [{ values: { angle: 3, bearing: 2 } }, '/response/values/bearing'],
    [undefined, '/response'],
  ])('%j is refused at %s', (response, place) => {
    expect(marked(exercise, response)).toMatchObject({ place });
  });
});

describe('a pose', () => {
  const exercise = exerciseWith({
    kind: 'pose',
    inputs: [
      { id: 'aside', bone: 'kite', channel: 'move.x', min: -2, max: 2 },
      { id: 'near', switch: 'kite.near', min: 0, max: 1 },
    ],
    requirements: [
      {
        id: 'points',
        kind: 'aims-at',
        bone: 'vane',
        target: { bone: 'kite' },
        allowed: 1,
        says: 'The vane points at the kite.',
      },
    ],
    references: [{ id: 'on', says: 'the switch on', response: { inputs: { aside: 1, near: 1 } } }],
    wrongTurns: [
      {
        id: 'off',
        says: 'the switch off',
        tells: 'It is off.',
        response: { inputs: { aside: 1 } },
        misses: ['points'],
      },
    ],
  })();

  test('counts as it is handed in, and no other', () => {
    expect(marked(exercise, { inputs: { aside: 1.5, near: 1 } })).toMatchObject({ mark: 1 });
    expect(marked(exercise, { inputs: { aside: 1, near: 0 } })).toEqual({ mark: 0, diagnoses: ['off'] });
  });
});

describe('an order', () => {
  const exercise = exerciseWith({
    kind: 'order',
    requirements: [
      {
        id: 'order',
        kind: 'in-order',
        items: ['tail', 'vane', 'vane.watch', 'kite', 'let_go'],
        allowed: 0,
        says: 'In which order?',
      },
    ],
    references: [{ id: 'one', says: 'one', response: { order: ['kite', 'let_go', 'vane.watch', 'vane', 'tail'] } }],
    wrongTurns: [
      {
        id: 'tail-first',
        says: 'child first',
        tells: 'A child waits.',
        response: { order: ['tail', 'kite', 'let_go', 'vane.watch', 'vane'] },
        misses: ['order'],
      },
    ],
  })();

  test('is met by any that lets nothing wait', () => {
    expect(marked(exercise, { order: ['let_go', 'kite', 'vane.watch', 'vane', 'tail'] })).toMatchObject({ mark: 1 });
    expect(checkVariant(markingOf(exercise))).toEqual([]);
  });

  test('with a child before its parent is told so', () => {
    expect(marked(exercise, { order: ['tail', 'kite', 'let_go', 'vane.watch', 'vane'] })).toEqual({
      mark: 0,
      diagnoses: ['tail-first'],
    });
  });

  test('with a name twice is refused', () => {
    expect(marked(exercise, { order: ['tail', 'tail', 'let_go', 'vane.watch', 'vane'] })).toMatchObject({
      place: '/response/order/1',
    });
  });
});

describe('a map', () => {
  const exercise = exerciseWith({
    kind: 'shape',
    shape: 'let_go',
    inputs: [
      { id: 'aside', bone: 'kite', channel: 'move.x', min: -2, max: 2 },
      { id: 'near', switch: 'kite.near', min: 0, max: 1 },
    ],
    requirements: [
      {
        id: 'points',
        kind: 'aims-at',
        bone: 'vane',
        target: { bone: 'kite' },
        at: { near: 0 },
        allowed: 1,
        says: 'At 0 the vane watches.',
      },
      {
        id: 'still',
        kind: 'holds-still',
        bone: 'vane',
        moving: ['aside'],
        by: 'turn',
        at: { near: 1 },
        allowed: 1,
        says: 'At 1 it does not.',
      },
    ],
    references: [
      {
        id: 'inverted',
        says: 'inverted',
        edit: {
          drivers: {
            let_go: {
              map: {
                keys: [
                  [0, 1],
                  [1, 0],
                ],
              },
            },
          },
        },
      },
    ],
    wrongTurns: [
      {
        id: 'as-given',
        says: 'not inverted',
        tells: 'Turn it round.',
        edit: {
          drivers: {
            let_go: {
              map: {
                keys: [
                  [0, 0],
                  [1, 1],
                ],
              },
            },
          },
        },
        misses: ['points', 'still'],
      },
    ],
  })();

  test('is judged by what the rig does with it', () => {
    expect(
      marked(exercise, {
        map: {
          keys: [
            [0, 1],
            [0.5, 0.5],
            [1, 0],
          ],
        },
      }),
    ).toMatchObject({ mark: 1 });
    expect(
      marked(exercise, {
        map: {
          keys: [
            [0, 0],
            [1, 1],
          ],
        },
      }),
    ).toEqual({ mark: 0, diagnoses: ['as-given', 'as-given'] });
    expect(checkVariant(markingOf(exercise))).toEqual([]);
  });

  test('that is no map is refused at its place', () => {
    expect(marked(exercise, { map: { keys: [[0, 1]] } })).toMatchObject({ place: '/response/map/keys' });
  });
});
