import { expect, test } from 'vitest';
import { openDraft, openVersion } from '../../../src/workbench/edit/openDraft.ts';
import { renameBone } from '../../../src/workbench/edit/renameBone.ts';
import { setRest } from '../../../src/workbench/edit/setRest.ts';
import {
  contentOf,
  isSameContent,
  NAME_MAX,
  namedApart,
  nextName,
  proofNow,
  proofWords,
  versionOf,
} from '../../../src/workbench/keep/version.ts';
import { attemptOf } from '../../../src/workbench/proof/attempt.ts';
import { type ProofRecord, stampOf } from '../../../src/workbench/proof/record.ts';
import { draftOf, newSession, reduce, type Session } from '../../../src/workbench/state/session.ts';
import { DRAFT } from '../support/twinVanes.ts';

const BUILD = { kind: 'build', edition: 'e1', id: 'twin', skills: ['aim'] } as const;
const about = { work: 'twin/0', name: 'first try', when: 5 };
const at = (session: Session, edit: Parameters<typeof reduce>[1] & { do: 'edit' }) => reduce(session, edit);
const renamed = at(newSession(DRAFT), { do: 'edit', edit: renameBone('wind', 'breeze'), slot: '', when: 1 });

function proved(session: Session, mark: number): { session: Session; proof: ProofRecord } {
  const result = { exercise: 'twin', edition: 'e1', seed: 0, mark, passed: mark === 1, requirements: [] };
  const proof = {
    when: 2,
    result,
    messages: {},
    stamp: stampOf(session, BUILD),
    guess: null,
  } as unknown as ProofRecord;
  return { session: reduce(session, { do: 'prove', proof }), proof };
}

test('a version holds what stands, and the mark where the last proof was of just that', () => {
  expect(versionOf(renamed, BUILD, about)).toEqual({
    ...about,
    draft: draftOf(renamed),
    edition: 'e1',
    fromFile: false,
    proof: null,
  });
  const { session } = proved(renamed, 0.6);
  expect(versionOf(session, BUILD, about).proof).toEqual({ mark: 0.6, passed: false });
  const moved = at(session, { do: 'edit', edit: setRest('wind_left', { length: 0.2 }, 'length'), slot: '', when: 9 });
  expect(versionOf(moved, BUILD, about).proof).toBeNull();
});

test('the pose belongs to a version where the pose is the answer, and only there', () => {
  const posed = reduce(renamed, { do: 'pose', pose: { switches: { 'breeze.together': 1 } } });
  expect(contentOf(posed, { kind: 'pose' })).toEqual({ draft: draftOf(posed), pose: posed.pose });
  expect(contentOf(posed, BUILD)).toEqual({ draft: draftOf(posed) });
});

test('opening a version is a step that undo takes back, with nothing lost', () => {
  const version = versionOf(renamed, BUILD, about);
  const other = at(newSession(DRAFT), { do: 'edit', edit: renameBone('wind', 'gust'), slot: '', when: 1 });
  const opened = at(other, { do: 'edit', edit: openVersion(version), slot: 'versions', when: 2 });
  expect(draftOf(opened)).toEqual(draftOf(renamed));
  expect(opened.history.steps.map(({ says }) => says)).toEqual(['rename wind to gust', 'open “first try”']);
  expect(draftOf(reduce(opened, { do: 'undo' }))).toEqual(draftOf(other));
});

test('what came from a file stays so through a version, whatever it is called', () => {
  const fromFile = at(newSession(DRAFT), { do: 'edit', edit: openDraft(draftOf(renamed)), slot: '', when: 1 });
  const version = versionOf(fromFile, BUILD, about);
  const begun = reduce(fromFile, { do: 'undo' });
  const aided = (name: string, session: Session, fromFile: boolean) => {
    const edit = openVersion({ ...version, name, fromFile });
    const opened = at(session, { do: 'edit', edit, slot: '', when: 3 });
    return attemptOf(opened, proved(opened, 1).proof, BUILD)?.aided;
  };
  expect(version.fromFile).toBe(true);
  expect(aided('first try', begun, version.fromFile)).toBe(true);
  expect(aided('a file kept as a file', begun, false)).toBe(false);
});

test('the same content is told by what it says, not by identity or the order of fields', () => {
  const { rig, parts } = DRAFT;
  expect(isSameContent({ draft: DRAFT }, { draft: structuredClone({ parts, rig }) })).toBe(true);
  expect(isSameContent({ draft: DRAFT }, contentOf(renamed, BUILD))).toBe(false);
  expect(isSameContent({ draft: DRAFT, pose: {} }, { draft: DRAFT, pose: { switches: { a: 1 } } })).toBe(false);
});

test('a proof of an earlier state says nothing of the present one', () => {
  const { session } = proved(renamed, 1);
  expect(proofNow(session, BUILD)).toEqual({ mark: 1, passed: true });
  expect(proofNow(reduce(session, { do: 'undo' }), BUILD)).toBeNull();
});

test('names are offered free, and kept short', () => {
  expect(nextName([])).toBe('version 1');
  expect(nextName(['first', 'version 3'])).toBe('version 4');
  expect(namedApart('first', ['first', 'first (2)'])).toBe('first (3)');
  const long = 'x'.repeat(NAME_MAX + 9);
  const apart = namedApart(long, [long.slice(0, NAME_MAX)]);
  expect(apart.length).toBeLessThanOrEqual(NAME_MAX);
});

test('what a proof said is told in words', () => {
  expect(proofWords(null)).toBe('no proof made');
  expect(proofWords({ mark: 1, passed: true })).toBe('proved, mark 100 %');
  expect(proofWords({ mark: 0.6, passed: false })).toBe('not proved, mark 60 %');
});
