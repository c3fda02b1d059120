import { describe, test } from 'vitest';
import { relative, restOf } from '../../src/solver/compile/restTransforms.ts';
import type { Rig } from '../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/1.2-parents';
const crane = rigOf(`${folder}/crane-by-night.json`);
const lids = rigOf(`${folder}/toad-lids.json`);
const heron = rigOf(`${folder}/heron-beak.json`);
const tail = rigOf(`${folder}/dog-tail.json`);

/** Half of the angle whose sine is 0.6 has sine 1/√10. */
const RAISED = { turn: [-1 / Math.sqrt(10), 0, 0, 3 / Math.sqrt(10)] } as const;
const restLocal = ({ bones }: Rig, name: string) => {
  const bone = bones.find((one) => one.name === name)!;
  const parent = bones.find((one) => one.name === bone.parent)!;
  return relative(restOf(parent.rest), restOf(bone.rest));
};
const tipOf = (rig: Rig, name: string, pose: Parameters<typeof solved>[1]) => {
  const { base, axis } = solved(rig, pose);
  const { length } = rig.bones.find((one) => one.name === name)!.rest;
  return base(name).map((x, i) => x + length * axis(name, 'z')[i]!);
};

// Check values: the arithmetic on the page, worked by hand from the triangle 3, 4, 5.
describe('lesson 1.2 says what the solver does', () => {
  test('the lantern runs down the rail of the raised boom', () => {
    const pose = { bones: { boom: RAISED, lantern: { move: [0, 0, 0.5] } } } as const;
    const { base } = solved(crane, pose);
    expectClose(base('lantern'), [0, 3.8, 2.7], 1e-12);
    expectClose(Math.hypot(3.8 - 3.7, 2.7 - 2.4), 0.316, 5e-4);
  });

  test('as the boom sees it the lantern has not moved', () => {
    const { base, axis } = solved(crane, { bones: { boom: RAISED } });
    const away = base('lantern').map((x, i) => x - base('boom')[i]!);
    const seen = (['x', 'y', 'z'] as const).map((letter) =>
      axis('boom', letter).reduce((sum, x, i) => sum + x * away[i]!, 0),
    );
    expectClose(seen, [0, 0, 3], 1e-12);
    expectClose(restLocal(crane, 'lantern').base, [0, 0, 3], 1e-15);
  });

  test('the rest local of the Heron’s head is worked by hand', () => {
    const { base, turn } = restLocal(heron, 'head');
    expectClose(base, [0, 0, 0.4], 1e-15);
    expectSameTurn(turn, [Math.SQRT1_2, 0, 0, Math.SQRT1_2], 1e-15);
    expectClose(solved(heron, {}).axis('neck', 'y'), [0, 0, -1], 1e-15);
  });

  test('a holder along the hinge leaves the tape alone, a square one lifts its end by 3 cm', () => {
    const before = { left: tipOf(lids, 'tape_left', {}), right: tipOf(lids, 'tape_right', {}) };
    expectClose(before.left, [0.24, 0.24, 0.2], 1e-15);
    expectClose(before.right, [-0.24, 0.24, 0.2], 1e-15);
    const turned = { turn: { angles: [60, 0, 0] } } as const;
    const pose = { bones: { holder_left: turned, holder_right: turned } };
    expectClose(tipOf(lids, 'tape_left', pose), before.left, 1e-15);
    const [x, y, z] = tipOf(lids, 'tape_right', pose);
    expectClose([x!, y! - 0.24, Math.abs(z! - 0.2)], [-0.24, 0.03, 0.06 * Math.sin(Math.PI / 3)], 1e-12);
    expectClose(0.06 * Math.sin(Math.PI / 3), 0.052, 5e-4);
  });

  test('a place typed as the boom sees it lies on the quay', () => {
    const typed = rigOf(`${folder}/typed-again.json`);
    expectClose(solved(typed, {}).base('lantern'), [0, 0, 3], 1e-14);
  });

  test('the bell goes to the right as the answer says', () => {
    expectClose(restLocal(tail, 'bell').base, [0, 0, 0.4], 1e-15);
    const { base } = solved(tail, { bones: { tail: { turn: { angles: [0, 30, 0] } } } });
    expectClose(base('bell'), [-0.2, 0.6, -0.5 - 0.4 * Math.cos(Math.PI / 6)], 1e-12);
    expectClose(0.5 + 0.4 * Math.cos(Math.PI / 6), 0.846, 5e-4);
  });
});
