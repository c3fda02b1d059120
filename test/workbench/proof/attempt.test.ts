import { expect, test } from 'vitest';
import type { Graded } from '../../../src/grader/result.ts';
import { openDraft } from '../../../src/workbench/edit/openDraft.ts';
import { attemptsIn } from '../../../src/workbench/keep/upgrade.ts';
import { attemptOf } from '../../../src/workbench/proof/attempt.ts';
import type { ProofRecord } from '../../../src/workbench/proof/record.ts';
import { newSession, reduce } from '../../../src/workbench/state/session.ts';
import { DRAFT } from '../support/twinVanes.ts';

const BUILD = { id: 'one-vane', skills: ['shortest-turn', 'aim-axis'], kind: 'build' } as const;
const REPAIR = { id: 'flinch', skills: ['diagnose'], kind: 'repair', fault: 'off-line' } as const;

function proofOf(change: { seed?: number; passed?: boolean; stamp?: string; guess?: string } = {}): ProofRecord {
  const { seed = 3, passed = true, stamp = '1.1', guess = null } = change;
  const result = { outcome: 'graded', exercise: 'one-vane', seed, passed } as Graded;
  return { when: 1000, result, messages: {}, stamp, guess };
}

const begun = newSession(DRAFT, 3);

test('a proof counts for the skills of its exercise, with its seed, its time and what came of it', () => {
  const counted = { skills: ['aim-axis', 'shortest-turn'], exercise: 'one-vane', seed: 3, when: 1000, aided: false };
  expect(attemptOf(begun, proofOf(), BUILD)).toEqual({ ...counted, passed: true });
  expect(attemptOf(begun, proofOf({ passed: false }), BUILD)).toEqual({ ...counted, passed: false });
});

test('a hint that was opened makes it aided', () => {
  const hinted = reduce(begun, { do: 'hint', taken: { hint: 0, guess: 'unsure' } });
  expect(attemptOf(hinted, proofOf(), BUILD)).toMatchObject({ aided: true });
});

test('work taken from a file makes it aided, unless that was undone', () => {
  const rig = { ...DRAFT.rig, bones: DRAFT.rig.bones.slice(0, 1) };
  const opened = reduce(newSession({ rig, parts: {} }, 3), {
    do: 'edit',
    edit: openDraft(DRAFT),
    slot: 'file',
    when: 1,
  });
  expect(opened.history.at).toBe(1);
  expect(attemptOf(opened, proofOf(), BUILD)).toMatchObject({ aided: true });
  expect(attemptOf(reduce(opened, { do: 'undo' }), proofOf(), BUILD)).toMatchObject({ aided: false });
});

test('the same state proved once more is not another attempt; a changed one and another drawing are', () => {
  const once = reduce(begun, { do: 'prove', proof: proofOf() });
  expect(attemptOf(once, proofOf(), BUILD)).toBeNull();
  expect(attemptOf(once, proofOf({ stamp: '2.7' }), BUILD)).not.toBeNull();
  expect(attemptOf(once, proofOf({ seed: 4 }), BUILD)).not.toBeNull();
});

test('of a repair it is told whether the fault had been named', () => {
  expect(attemptOf(begun, proofOf({ guess: 'off-line' }), REPAIR)).toMatchObject({ named: true });
  expect(attemptOf(begun, proofOf({ guess: 'too-long' }), REPAIR)).toMatchObject({ named: false });
});

test('version 1 of the database: the proofs kept with a work become attempts', () => {
  const kept = {
    proofs: [proofOf({ seed: 2, passed: false }), proofOf({ seed: 2 })],
    hints: [{ hint: 0, guess: 'x' }],
  };
  expect(attemptsIn(kept)).toEqual([
    { skills: [], exercise: 'one-vane', seed: 2, when: 1000, passed: false, aided: true },
    { skills: [], exercise: 'one-vane', seed: 2, when: 1000, passed: true, aided: true },
  ]);
});
