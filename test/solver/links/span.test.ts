/** Numbers from outside for span and follow. Their degenerate cases stand in ../degenerate. */
import { expect, test } from 'vitest';
import type { SpanLink } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, QUARTER, rigOf, tipOf } from '../degenerate/build.ts';
import { solveRig } from '../solveRig.ts';

const spanTo = (distance: number, link: Partial<SpanLink> = {}) =>
  solveRig(
    rigOf([
      bone('rod_end', { at: [0, 0, distance] }),
      bone('rod', { links: [{ name: 'span', kind: 'span', target: { bone: 'rod_end' }, ...link }] }),
    ]),
  );
const sizes = (result: ReturnType<typeof solveRig>) =>
  (['x', 'y', 'z'] as const).map((axis) => Math.hypot(...column(result, 'rod', axis)));

// Incompressible uniaxial extension λ, 1/√λ, 1/√λ (neo-Hookean solid; check value G6, determinant 1).
test.each([
  [2, Math.SQRT1_2],
  [4, 0.5],
  [0.5, Math.SQRT2],
  [1.21, 0.9090909090909091],
])('kept volume at ratio %s is %s across', (ratio, across) => {
  const result = spanTo(0.5 * ratio, { sides: 'volume' });
  expectClose(sizes(result), [across, across, ratio], 1e-15);
  expectClose(tipOf(result, 'rod'), [0, 0, 0.5 * ratio], 1e-15);
});

// Common practice, no source: ratio = distance ÷ rest length, read before bounds.
test('a rest length of its own sets the ratio, not where the tip lands', () => {
  const result = spanTo(0.9, { sides: 'volume', restLength: 0.6 });
  expectClose(sizes(result), [1 / Math.sqrt(1.5), 1 / Math.sqrt(1.5), 1.8], 1e-15);
  expectClose(tipOf(result, 'rod'), [0, 0, 0.9], 1e-15);
});
test('bounds hold the ratio, and the volume goes by the bounded one', () => {
  expectClose(sizes(spanTo(2, { sides: 'volume', most: 2.25 })), [2 / 3, 2 / 3, 2.25], 1e-15);
  expectClose(sizes(spanTo(0.05, { sides: 'volume', least: 0.25 })), [2, 2, 0.25], 1e-15);
});

test('a rig at twice the size spans at twice the size', () => {
  const rig = rigOf([
    bone('ground'),
    bone('rod_end', { parent: 'ground', at: [0, 0.3, 0.4] }),
    bone('rod', { parent: 'ground', links: [{ name: 'span', kind: 'span', target: { bone: 'rod_end' } }] }),
  ]);
  const result = solveRig(rig, { bones: { ground: { size: [2, 2, 2] } } });
  expectClose(sizes(result), [2, 2, 2], 1e-15);
  expectClose(tipOf(result, 'rod'), [0, 0.6, 0.8], 1e-15);
});

test('follow takes over turn and keeps the offset at rest', () => {
  const rig = rigOf([
    bone('skull', { at: [0, 1, 0] }),
    bone('brow', { at: [0, 1, 0.2], links: [{ name: 'follow', kind: 'follow', source: 'skull', offset: 'keep' }] }),
    bone('hat', { at: [0, 1, 0.2], links: [{ name: 'follow', kind: 'follow', source: 'skull' }] }),
  ]);
  const result = solveRig(rig, { bones: { skull: { turn: QUARTER.y } } });
  expectClose(baseOf(result, 'brow'), [0.2, 1, 0], 1e-15);
  expectClose(baseOf(result, 'hat'), [0, 1, 0], 1e-15);
  expectClose(columns(result, 'brow'), columns(result, 'skull'), 1e-15);
  expect(result.flags).toEqual([]);
});

// glTF tutorial 007: (14, 3, −2) at 0.8 s and (18, 1, 1) at 1.6 s give (16, 2, −0.5) at 1.2 s; check value D7.
test('a half weight moves half the way, straight', () => {
  const rig = rigOf([
    bone('skull', { at: [18, 1, 1] }),
    bone('brow', { at: [14, 3, -2], links: [{ name: 'follow', kind: 'follow', source: 'skull', weight: 0.5 }] }),
  ]);
  expectClose(baseOf(solveRig(rig), 'brow'), [16, 2, -0.5], 0);
});
