/** Numbers from outside for share and limit: swing and twist. */
import { test } from 'vitest';
import type { Rig } from '../../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../../support/close.ts';
import { bone, rigOf } from '../degenerate/build.ts';
import { solveRig, turnOf } from '../solveRig.ts';

/** A1 of the check values: Rx(30°)·Ry(60°)·Rz(45°), SciPy's class docstring. */
const A1 = { angles: [30, 60, 45] } as const;

const copied = (fraction: number, weight?: number): Rig =>
  rigOf([
    bone('wing'),
    bone('quill', {
      links: [{ name: 'roll', kind: 'share', source: 'wing', fraction, ...(weight !== undefined && { weight }) }],
    }),
  ]);
const twistDeg = (q: number[]) => (2 * Math.atan2(q[2], q[3]) * 180) / Math.PI;

// M. B. Reynolds, Quaternion swing-twist decomposition (2022); check value C11.
test('the twist of A1 about z is 62.58795392°', () => {
  const result = solveRig(copied(1), { bones: { wing: { turn: A1 } } });
  // The value is of A1 to its eight digits, which leave 3e-7° open.
  expectClose(twistDeg(turnOf(result, 'quill')), 62.58795392, 3e-7);
});

// VRMC_node_constraint 1.0, Roll; check value C12 (agrees with three-vrm-node-constraint).
test.each([
  [0.5, 1],
  [1, 0.5],
])('a twist of 80° shared at fraction %s, weight %s is 40°', (fraction, weight) => {
  const result = solveRig(copied(fraction, weight), { bones: { wing: { turn: { angles: [0, 0, 80] } } } });
  expectClose(twistDeg(turnOf(result, 'quill')), 40, 1e-12);
});

// Reynolds' Q = swing · twist and C11: taking the twist away leaves the swing of A1 from +z.
test('a limit of twist to 0 leaves the swing', () => {
  const rig = rigOf([bone('wing', { links: [{ name: 'still', kind: 'limit', twist: [0, 0] }] })]);
  const turn = turnOf(solveRig(rig, { bones: { wing: { turn: A1 } } }), 'wing');
  const halfRad = (62.58795392 * Math.PI) / 360;
  const [c, s] = [Math.cos(halfRad), Math.sin(halfRad)];
  const [x, y, z, w] = [0.39190384, 0.36042341, 0.43967974, 0.72331741];
  // A1 · (twist)⁻¹
  expectSameTurn(turn, [x * c - y * s, y * c + x * s, z * c - w * s, w * c + z * s], 1e-16);
});
