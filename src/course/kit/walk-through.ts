/**
 * From the folder that `counterpose new exercise` lays out to an exercise that is sound, in steps: each gives fields of
 * exercise.json anew. The authors' page prints them, and the tests follow them.
 */
export interface Step {
  id: string;
  fields: Readonly<Record<string, unknown>>;
}

const upright = [0, 0, 0, 1];
const aimWith = (more: object) => ({ bones: { vane: { links: { watch: more } } } });

const words: Step = {
  id: 'words',
  fields: {
    title: 'A vane and its kite',
    task: 'Make vane point at the kite, wherever it flies, however the quay is turned.',
    why: 'Whoever animates this moves the kite and nothing else.',
  },
};

const requirements: Step = {
  id: 'requirements',
  fields: {
    requirements: [
      {
        id: 'points',
        kind: 'aims-at',
        bone: 'vane',
        target: { bone: 'kite' },
        allowed: 1,
        weight: 3,
        says: 'Wherever the kite flies, the vane points at its base.',
      },
      {
        id: 'answers',
        kind: 'answers-to',
        bone: 'vane',
        input: 'kite-x',
        by: 'turn',
        allowed: 10,
        says: 'A kite that flies aside turns the vane.',
      },
      { id: 'length', kind: 'keeps-size', bone: 'vane', allowed: 1, says: 'The vane keeps its length.' },
      { id: 'given', kind: 'kept', allowed: 0, says: 'What was given stays as it was.' },
      { id: 'runs', kind: 'evaluates', allowed: 0, says: 'No bone waits for itself.' },
    ],
  },
};

const references: Step = {
  id: 'references',
  fields: {
    references: [
      { id: 'aim', says: 'One aim link on the vane.', edit: aimWith({ kind: 'aim', target: { bone: 'kite' } }) },
      {
        id: 'pointer',
        says: 'A helper aims, and the vane follows its turn.',
        edit: {
          bones: {
            pointer: {
              parent: 'quay',
              role: 'helper',
              rest: { base: [0, 1.5, 0], turn: upright, length: 0.1 },
              links: { watch: { kind: 'aim', target: { bone: 'kite' } } },
            },
            vane: { links: { after: { kind: 'follow', source: 'pointer', channels: ['turn'] } } },
          },
        },
      },
    ],
  },
};

const wrongTurns: Step = {
  id: 'wrong-turns',
  fields: {
    wrongTurns: [
      {
        id: 'reversed',
        says: 'The axis is reversed.',
        tells: 'The vane turns its back on the kite: the axis in the link has the wrong sign.',
        from: 'aim',
        edit: aimWith({ axis: '-z' }),
        misses: ['points'],
      },
      {
        id: 'sideways',
        says: 'A side axis is aimed.',
        tells: 'A side of the vane faces the kite. A bone points along its own +z.',
        from: 'aim',
        edit: aimWith({ axis: '+x' }),
        misses: ['points'],
      },
      {
        id: 'half',
        says: 'The link is left at half its weight.',
        tells: 'The vane goes half the way. At weight 1 it goes all of it.',
        from: 'aim',
        edit: aimWith({ weight: 0.5 }),
        misses: ['points'],
      },
    ],
  },
};

const free: Step = {
  id: 'free',
  fields: {
    freeChoices: [{ says: 'A helper may stand where it likes.', bone: '*', fields: ['rest', 'parent'] }],
  },
};

export const STEPS: readonly Step[] = [words, requirements, references, wrongTurns, free];
