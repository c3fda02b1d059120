import { expect, test } from 'vitest';
import type { Exercise } from '../../../src/grader/index.ts';
import { answerOf } from '../../../src/workbench/answer/answerOf.ts';
import { answeredBy, isAnswered } from '../../../src/workbench/answer/kinds.ts';
import { valuesAsked } from '../../../src/workbench/answer/values.ts';
import { draftFromText } from '../../../src/workbench/desk/draftFromText.ts';
import { setKey } from '../../../src/workbench/edit/maps.ts';
import { moveInOrder, setValue } from '../../../src/workbench/edit/respond.ts';
import { readiness } from '../../../src/workbench/proof/readiness.ts';
import { newSession, reduce, type Session } from '../../../src/workbench/state/session.ts';
import { courseExercise } from '../support/exercise.ts';
import { TWIN_VANES } from '../support/twinVanes.ts';

const built = courseExercise('one-vane');
const fields = { id: 'vanes', edition: 'e', seed: 3, start: TWIN_VANES, parts: [], kept: [], hints: [] };
/** An exercise of another kind among the twin vanes, as far as answering it needs. */
const vanes = (more: Partial<Exercise>) => ({ ...built, ...fields, requirements: [], inputs: [], ...more }) as Exercise;
const begin = (exercise: Exercise) => newSession({ rig: exercise.start, parts: {} }, exercise.seed);
const edited = (session: Session, edit: Parameters<typeof reduce>[1] & { do: 'edit' }) => reduce(session, edit);

const shape = vanes({ kind: 'shape', shape: 'let_go' });
const pose = vanes({
  kind: 'pose',
  inputs: [
    { id: 'side', bone: 'wind_left', channel: 'move.x', min: -1, max: 1 },
    { id: 'yaw', bone: 'wind', channel: 'turn.y', min: -90, max: 90 },
    { id: 'together', switch: 'wind.together', min: 0, max: 1 },
  ],
});
const order = vanes({
  kind: 'order',
  requirements: [{ id: 'order', kind: 'in-order', allowed: 0, says: '', items: ['vane_left', 'wind', 'wind_left'] }],
});

/** The session after its answer was saved to a file and that was opened again. */
function again(session: Session, exercise: Exercise): Session {
  const text = JSON.stringify(answerOf(session, exercise));
  const read = draftFromText(text, exercise);
  if (!read.ok) throw new Error(`${read.refusal.place}: ${read.refusal.found}, ${read.refusal.expected}`);
  const fresh = newSession(read.value.draft, exercise.seed);
  return read.value.pose ? reduce(fresh, { do: 'pose', pose: read.value.pose }) : fresh;
}

test('a map is answered by itself, and comes back into its rig', () => {
  const session = edited(begin(shape), { do: 'edit', edit: setKey('let_go', 1, [1, 0.25]), slot: '', when: 1 });
  expect(answerOf(session, shape)).toMatchObject({ exercise: 'vanes', seed: 3 });
  expect(answerOf(session, shape).response).toEqual({
    map: {
      keys: [
        [0, 1],
        [1, 0.25],
      ],
    },
  });
  expect(again(session, shape).history.document).toEqual(session.history.document);
});

test('a pose is answered by the exercise’s inputs, and comes back as a pose', () => {
  const session = reduce(begin(pose), {
    do: 'pose',
    pose: {
      bones: { wind_left: { move: [0.25, 0, 0] }, wind: { turn: { angles: [0, 30, 0] } } },
      switches: { 'wind.together': 0.5 },
    },
  });
  expect(answerOf(session, pose).response).toEqual({ inputs: { side: 0.25, yaw: 30, together: 0.5 } });
  expect(again(session, pose).pose).toEqual(session.pose);
});

test('an order begins as the exercise lists it', () => {
  const session = begin(order);
  expect(answerOf(session, order).response).toEqual({ order: ['vane_left', 'wind', 'wind_left'] });
  const names = ['vane_left', 'wind', 'wind_left'];
  const moved = edited(session, { do: 'edit', edit: moveInOrder(names, 'vane_left', 2), slot: '', when: 1 });
  expect(answerOf(moved, order).response).toEqual({ order: ['wind', 'wind_left', 'vane_left'] });
  expect(answerOf(again(moved, order), order)).toEqual(answerOf(moved, order));
});

test('a prediction waits for every number, and one drawing takes one answer', () => {
  const exercise = courseExercise('how-high-the-hook');
  const [first, second] = valuesAsked(exercise);
  expect(first).toMatchObject({ unit: 'cm' });
  const give = (session: Session, id: string, value: number) =>
    edited(session, { do: 'edit', edit: setValue(id, value), slot: '', when: 1 });
  const half = give(begin(exercise), first!.id, 104);
  expect(readiness(half, exercise).waits).toBe('Answer every question first.');
  const whole = give(half, second!.id, -60);
  expect(readiness(whole, exercise)).toMatchObject({ waits: null, answered: false });
  expect(answerOf(whole, exercise).response).toEqual({ values: { [first!.id]: 104, [second!.id]: -60 } });
  expect(again(whole, exercise).history.document).toEqual(whole.history.document);

  const result = { seed: exercise.seed } as Session['proofs'][number]['result'];
  const proof = { when: 1, result, messages: {}, stamp: '', guess: null };
  const proved = reduce(whole, { do: 'prove', proof });
  expect(isAnswered(proved, exercise)).toBe(true);
  const next = reduce(proved, { do: 'redraw', draft: { rig: exercise.start, parts: {} }, seed: 1 });
  expect(isAnswered(next, exercise)).toBe(false);
});

test('a rig and its parts come back as they were saved', () => {
  const session = reduce(newSession({ rig: built.start, parts: { kite: 'quay' } }), { do: 'guess', guess: 'x' });
  expect(answeredBy(built)).toBe('rig');
  expect(answerOf(session, built)).toMatchObject({ rig: built.start, parts: { kite: 'quay' }, guess: 'x' });
  expect(again(session, built).history.document).toEqual(session.history.document);
});

test('an answer to another exercise or another variant is refused with its place', () => {
  const text = JSON.stringify(answerOf(begin(built), built));
  const from = (change: object) => draftFromText(JSON.stringify({ ...JSON.parse(text), ...change }), built);
  expect(from({ exercise: 'let-go' })).toMatchObject({ ok: false, refusal: { place: '/exercise' } });
  expect(from({ seed: 1 })).toMatchObject({ ok: false, refusal: { place: '/seed' } });
  expect(from({})).toMatchObject({ ok: true });
});
