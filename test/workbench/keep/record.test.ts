import { expect, test } from 'vitest';
import { renameBone } from '../../../src/workbench/edit/renameBone.ts';
import { changeBetween, sharedCount } from '../../../src/workbench/keep/changes.ts';
import { type Kept, migrated, packed, SCHEMA, unpacked, workKey } from '../../../src/workbench/keep/record.ts';
import { newSession, reduce } from '../../../src/workbench/state/session.ts';
import { DRAFT } from '../support/twinVanes.ts';

const about = { key: workKey('one-vane', 0), edition: 'e', revision: 1 };
const edited = reduce(newSession(DRAFT), {
  do: 'edit',
  edit: renameBone('wind', 'breeze'),
  slot: 'bone wind',
  when: 1,
});
const session = reduce(reduce(edited, { do: 'undo' }), { do: 'pose', pose: { switches: { 'wind.together': 0.5 } } });

function keptOf(from: typeof session): Kept {
  const { document, steps } = from.history;
  return structuredClone({ work: packed(from, about), draft: document, steps: [...steps] });
}

test('what was kept comes back as it was left, with what was undone', () => {
  const read = unpacked(keptOf(session));
  expect(read).toEqual({ ok: true, value: { ...session, said: '', refused: null } });
  if (read.ok) expect(reduce(read.value, { do: 'redo' }).history.document).toEqual(edited.history.document);
});

test('a draft that cannot be read is refused with its place in the draft', () => {
  const kept = keptOf(session);
  const bones = kept.draft.rig.bones.map((bone) => ({ ...bone, name: 'gull' }));
  const read = unpacked({ ...kept, draft: { ...kept.draft, rig: { ...kept.draft.rig, bones } } });
  expect(read).toMatchObject({ ok: false, refusal: { place: expect.stringMatching(/^\/rig\/bones\//) } });
});

test('the present form passes; a later one and none at all are left alone', () => {
  const kept = keptOf(session);
  expect(migrated(kept)).toEqual({ ok: true, value: kept });
  for (const schema of [SCHEMA + 1, Number.NaN]) {
    const later = { ...kept, work: { ...kept.work, schema } };
    expect(migrated(later)).toMatchObject({ ok: false, refusal: { place: '/schema' } });
  }
});

test('each variant has its own place, and drawings of one exercise share theirs', () => {
  expect(new Set([workKey('a', 0), workKey('a', 1), workKey('b', 0), workKey('a', 'drawn')]).size).toBe(4);
});

test('the work is told from how it stands, and from what is not worth keeping', () => {
  const change = (action: Parameters<typeof reduce>[1], posed = false) =>
    changeBetween(session, reduce(session, action), posed);
  expect(change({ do: 'pose', pose: {} })).toBe('stand');
  expect(change({ do: 'view', view: 'try' })).toBe('stand');
  expect(change({ do: 'pose', pose: {} }, true)).toBe('work');
  expect(change({ do: 'redo' })).toBe('work');
  expect(change({ do: 'hint', taken: { hint: 0, guess: '' } })).toBe('work');
  expect(change({ do: 'choose', bone: 'wind' })).toBe('nothing');
  expect(change({ do: 'say', said: 'Proving …' })).toBe('nothing');
  expect(change({ do: 'edit', edit: renameBone('post', 'wind_left'), slot: 'bone post', when: 2 })).toBe('nothing');
});

test('steps that stand already are counted by identity', () => {
  const [a, b, c] = [1, 2, 3].map((when) => ({ says: '', patches: [], when }));
  expect(sharedCount([a!, b!], [a!, b!, c!])).toBe(2);
  expect(sharedCount([a!, b!], [a!, { ...b! }])).toBe(1);
});
