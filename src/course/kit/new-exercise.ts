import type { Files } from './files.ts';

/** Marks a text that its author still has to write; check-content names each. */
export const UNWRITTEN = '… ';

const upright = [0, 0, 0, 1];
const still = ['parent', 'role', 'rest', 'attach', 'inherits', 'turnOrder', 'locks', 'links'];

/** The files of a new exercise: a vane, a kite, one requirement. It fits the schema, and lacks what only its author knows. */
export function newExercise(id: string): Files {
  return { 'exercise.json': exercise(id), 'start.json': start };
}

const start = {
  format: 'counterpose/rig',
  version: 1,
  bones: [
    { name: 'kite', parent: null, role: 'control', rest: { base: [0, 1.5, 2], turn: upright, length: 0.1 } },
    { name: 'quay', parent: null, role: 'control', rest: { base: [0, 0, 0], turn: upright, length: 0.3 } },
    { name: 'vane', parent: 'quay', role: 'helper', rest: { base: [0, 1.5, 0], turn: upright, length: 0.3 } },
  ],
};

const exercise = (id: string) => ({
  format: 'counterpose/exercise',
  version: 1,
  id,
  lesson: '3.1',
  title: `${UNWRITTEN}a title of a few words`,
  kind: 'build',
  graded: false,
  skills: ['shortest-turn'],
  task: `${UNWRITTEN}what to make, as a supervisor would say it`,
  why: `${UNWRITTEN}why an animator cares`,
  start: { $file: 'start.json' },
  kept: [
    { bone: 'kite', fields: still },
    { bone: 'quay', fields: still },
    { bone: 'vane', fields: still.slice(0, -1) },
  ],
  parts: [],
  inputs: [
    { id: 'kite-x', bone: 'kite', channel: 'move.x', min: -2, max: 2 },
    { id: 'kite-y', bone: 'kite', channel: 'move.y', min: -1, max: 1 },
    { id: 'quay-yaw', bone: 'quay', channel: 'turn.y', min: -60, max: 60 },
  ],
  keepOut: [],
  requirements: [
    {
      id: 'points',
      kind: 'aims-at',
      bone: 'vane',
      target: { bone: 'kite' },
      allowed: 1,
      says: `${UNWRITTEN}what the rig must do, in one sentence`,
    },
    { id: 'given', kind: 'kept', allowed: 0, says: 'What was given stays as it was.' },
    { id: 'runs', kind: 'evaluates', allowed: 0, says: 'No bone waits for itself.' },
  ],
  references: [],
  wrongTurns: [],
  freeChoices: [],
  hints: [],
  structures: [{ id: 'drawn', says: 'as drawn' }],
  sizes: [1],
});
