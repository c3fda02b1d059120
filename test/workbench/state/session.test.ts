import { expect, test } from 'vitest';
import type { Graded } from '../../../src/grader/index.ts';
import { addBone } from '../../../src/workbench/edit/addBone.ts';
import { openDraft } from '../../../src/workbench/edit/openDraft.ts';
import { removeBone } from '../../../src/workbench/edit/removeBone.ts';
import { renameBone } from '../../../src/workbench/edit/renameBone.ts';
import { newSession, reduce, type Session } from '../../../src/workbench/state/session.ts';
import { createStore } from '../../../src/workbench/state/store.ts';
import { DRAFT } from '../support/twinVanes.ts';

const start = newSession(DRAFT);
const edit = (session: Session, made: Parameters<typeof reduce>[1] & { do: 'edit' }) => reduce(session, made);
const rename = { do: 'edit', edit: renameBone('wind', 'breeze'), slot: 'bone wind', when: 1 } as const;

test('an edit that can be read is kept as a step and told', () => {
  const after = edit(start, rename);
  expect(after.history.steps.map(({ says }) => says)).toEqual(['rename wind to breeze']);
  expect(after.said).toBe('Done: rename wind to breeze.');
});

test('an edit that cannot be read changes nothing, and says where and why', () => {
  const after = edit(start, { do: 'edit', edit: renameBone('wind', 'post'), slot: 'bone wind', when: 1 });
  expect(after.history).toBe(start.history);
  expect(after.refused).toMatchObject({ slot: 'bone wind', refusal: { place: '/bones/1/name' } });
  expect(reduce(after, { do: 'view', view: 'try' }).refused).toBe(null);
  expect(edit(after, rename).refused).toBe(null);
});

test('a renamed bone stays chosen and posed, through undo and redo', () => {
  const pose = { bones: { wind: { move: [0, 1, 0] }, post: {} }, switches: { 'wind.together': 1 } } as const;
  const renamed = edit({ ...start, chosen: 'wind', pose }, rename);
  expect(renamed).toMatchObject({ chosen: 'breeze', pose: { switches: { 'breeze.together': 1 } } });
  expect(renamed.pose.bones).toEqual({ breeze: { move: [0, 1, 0] }, post: {} });
  const undone = reduce(renamed, { do: 'undo' });
  expect(undone).toMatchObject({ chosen: 'wind', pose });
  expect(reduce(undone, { do: 'redo' }).chosen).toBe('breeze');
  expect(edit({ ...start, chosen: 'post' }, rename).chosen).toBe('post');
});

test('what is chosen does not go over to a bone that only stands where it stood', () => {
  const removed = edit(
    { ...start, chosen: 'wind' },
    { do: 'edit', edit: removeBone('wind'), slot: 'bone wind', when: 1 },
  );
  expect(reduce(removed, { do: 'undo' }).chosen).toBe('wind');
  const names = ['a', 'b', 'c', 'd', 'e', 'f'];
  const other = { ...DRAFT.rig, bones: names.map((name) => ({ ...DRAFT.rig.bones[0]!, name })) };
  const opened = openDraft({ rig: { ...other, drivers: [] }, parts: {} });
  const after = edit({ ...start, chosen: 'wind' }, { do: 'edit', edit: opened, slot: 'file', when: 1 });
  expect(after.history.at).toBe(1);
  expect(names).not.toContain(after.chosen);
});

test('every step can be kept by the browser, which copies data and no functions', () => {
  const rest = { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 } as const;
  const after = edit(edit(start, rename), { do: 'edit', edit: addBone(rest), slot: 'new', when: 2 });
  expect(structuredClone(after)).toEqual(after);
});

test('undo and redo are told by name, and do nothing at the ends', () => {
  const undone = reduce(edit(start, rename), { do: 'undo' });
  expect(undone.history.document).toEqual(DRAFT);
  expect(undone.said).toBe('Undone: rename wind to breeze.');
  expect(reduce(undone, { do: 'undo' })).toBe(undone);
  expect(reduce(undone, { do: 'redo' }).said).toBe('Done again: rename wind to breeze.');
});

test('a counterpose is loaded into Try, and any other pose puts it away', () => {
  const shown = reduce(start, { do: 'show', requirement: 'points', pose: { switches: { 'wind.together': 1 } } });
  expect(shown).toMatchObject({ view: 'try', shown: 'points', pose: { switches: { 'wind.together': 1 } } });
  expect(reduce(shown, { do: 'pose', pose: {} }).shown).toBe(null);
  expect(reduce(shown, { do: 'rest' })).toMatchObject({ shown: null, pose: {} });
});

test('another drawing begins anew, with the proofs so far', () => {
  const result = { seed: 0 } as Graded;
  const proved = reduce(edit(start, rename), {
    do: 'prove',
    proof: { when: 1, result, messages: {}, stamp: '', guess: null },
  });
  const again = reduce(proved, { do: 'redraw', draft: DRAFT, seed: 1 });
  expect(again).toMatchObject({ seed: 1, pose: {}, hints: [], guess: null, proofs: proved.proofs });
  expect(again.history.steps).toEqual([]);
});

test('a store tells its listeners of each change, and of none where nothing changes', () => {
  const store = createStore(start);
  let told = 0;
  const leave = store.subscribe(() => told++);
  store.dispatch({ do: 'undo' });
  expect(told).toBe(0);
  store.dispatch(rename);
  expect(told).toBe(1);
  leave();
  store.dispatch({ do: 'undo' });
  expect(told).toBe(1);
});
