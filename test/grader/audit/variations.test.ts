import { describe, expect, test } from 'vitest';
import { EQUIVALENTS, renameFree } from '../../../src/grader/audit/equivalents/table.ts';
import { MUTATIONS } from '../../../src/grader/audit/mutants/table.ts';
import type { Scope, Variation } from '../../../src/grader/audit/variation.ts';
import { compile, type Pose, readRig, solve } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { fitting, spanless } from './fitting.ts';

const scope: Scope = { spoken: new Set(['quay', 'kite', 'vane_left', 'vane_right', 'gull', 'gauge']), sizes: false };

/** What of a variation can be read and evaluated. */
function readable(variations: readonly Variation[]): Variation[] {
  return variations.flatMap((variation) => {
    const reading = readRig(variation.rig);
    return reading.ok ? [{ ...variation, rig: reading.value }] : [];
  });
}

function worldsOf({ rig }: Pick<Variation, 'rig'>, pose: Pose) {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(`a cycle: ${compiled.cycle.join(' → ')}`);
  return solve(compiled.program, pose).bones;
}

describe.each(Object.entries(MUTATIONS))('the mistake %s', (_, vary) => {
  const made = vary(fitting, scope);

  test('is made in the quay, and some of it can be read', () => {
    expect(made.length).toBeGreaterThan(0);
    expect(readable(made).length).toBeGreaterThan(0);
  });

  test('changes what the document says, in ways that differ, told apart in words', () => {
    const texts = made.map(({ rig }) => JSON.stringify(rig));
    for (const text of texts) expect(text).not.toBe(JSON.stringify(fitting));
    expect(new Set(made.map(({ says }) => says)).size).toBe(made.length);
    expect(new Set(texts).size).toBe(texts.length);
  });

  test('leaves the rig it is made in as it was', () => {
    const before = JSON.stringify(fitting);
    vary(fitting, scope);
    expect(JSON.stringify(fitting)).toBe(before);
  });
});

const poses: Pose[] = [
  {},
  { bones: { kite: { move: [0.4, -0.3, 0.2], turn: { angles: [20, -35, 50] } } }, switches: { 'kite.together': 0.3 } },
  { bones: { quay: { move: [0.1, 0, -0.2], turn: { angles: [5, 70, -10] } }, kite: { move: [-0.9, 0.5, -0.7] } } },
  { bones: { quay: { turn: { angles: [-40, 20, 15] } } }, switches: { 'kite.together': 1, 'kite.lamp': 1 } },
];

describe.each(Object.entries(EQUIVALENTS))('the other way of writing %s', (_, vary) => {
  const written = [fitting, spanless].flatMap((rig) =>
    readable(vary(rig, scope)).map((made) => ({ ...made, from: rig })),
  );

  test('is found in the quay, and is another document', () => {
    expect(written.length).toBeGreaterThan(0);
    for (const { rig, from } of written) expect(JSON.stringify(rig)).not.toBe(JSON.stringify(from));
  });

  test('puts every bone where it was, in every pose', () => {
    for (const pose of poses) {
      for (const { says, rig, from } of written) {
        const [was, is] = [worldsOf({ rig: from }, pose), worldsOf({ rig }, pose)];
        for (const name of Object.keys(was)) expectClose(is[name]!.matrix, was[name]!.matrix, 1e-9, `${says}: ${name}`);
      }
    }
  });
});

test('free names change, fixed ones stay, and every bone is where it was', () => {
  const [made] = renameFree(fitting, scope.spoken);
  const names = made!.renamed!;
  expect([...names.keys()]).toEqual(['peg', 'boom', 'jib', 'rider', 'feather']);
  const [was, is] = [worldsOf({ rig: fitting }, poses[1]!), worldsOf(made!, poses[1]!)];
  for (const name of Object.keys(was)) expectClose(is[names.get(name) ?? name]!.matrix, was[name]!.matrix, 0, name);
});
