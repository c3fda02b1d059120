/** Numbers from outside for aim; its degenerate cases stand in ../degenerate. */
import { expect, test } from 'vitest';
import type { AimLink, Vec3 } from '../../../src/solver/index.ts';
import { expectClose, expectSameTurn } from '../../support/close.ts';
import { bone, column, rigOf } from '../degenerate/build.ts';
import { solveRig, turnOf } from '../solveRig.ts';

type Given = Partial<Omit<AimLink, 'kind' | 'name' | 'target'>>;

const vaneAt = (kite: Vec3, link: Given = {}) =>
  solveRig(
    rigOf([
      bone('kite', { at: kite }),
      bone('vane', { links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' }, ...link }] }),
    ]),
  );
const turnTo = (kite: Vec3, link: Given = {}) => turnOf(vaneAt(kite, link), 'vane');

// VRMC_node_constraint 1.0, Aim: "smallest possible rotation" (check values C3, C5, C6; agrees with three-vrm).
test('takes the shortest turn from +z to (0.6, 0, 0.8)', () => {
  expectSameTurn(turnTo([0.6, 0, 0.8]), [0, 0.31622777, 0, 0.9486833], 1e-15);
});
test('turns +x to (1, 1, 0) by 45° about z', () => {
  expectSameTurn(turnTo([1, 1, 0], { axis: '+x' }), [0, 0, 0.38268343, 0.92387953], 1e-15);
});
test('at weight ½ by half of it', () => {
  expectSameTurn(turnTo([1, 1, 0], { axis: '+x', weight: 0.5 }), [0, 0, 0.19509032, 0.98078528], 1e-15);
});

// Cross products (check value C8; agrees with three `lookAt` and gl-matrix `targetTo`).
test('with an up axis the side axis stays level', () => {
  const up = { axis: '+y', toward: { direction: [0, 1, 0] } } as const;
  const result = vaneAt([1, 1, 1], { up });
  expectSameTurn(turnOf(result, 'vane'), [-0.27984814, 0.3647052, 0.1159169, 0.88047624], 1e-15);
  expectClose(column(result, 'vane', 'x'), [Math.SQRT1_2, 0, -Math.SQRT1_2], 1e-8);
  expectClose(column(result, 'vane', 'y'), [-0.40824829, 0.81649658, -0.40824829], 1e-8);
});
// Check value C9 (agrees with three): the shortest turn rolls differently.
test('without an up axis it does not', () => {
  const result = vaneAt([1, 1, 1]);
  expectSameTurn(turnOf(result, 'vane'), [-0.32505758, 0.32505758, 0, 0.88807383], 1e-15);
  expectClose(column(result, 'vane', 'x'), [0.78867513, -0.21132487, -0.57735027], 1e-8);
});

// glTF 2.0 Appendix C defines slerp; three, gl-matrix, wgpu-matrix, Babylon.js and quaternion agree on B10's 30°.
test('part weight is part of the angle, not of the chord', () => {
  const third = turnTo([Math.sin((2 * Math.PI) / 3), 0, Math.cos((2 * Math.PI) / 3)], { weight: 0.25 });
  expectSameTurn(third, [0, Math.sin(Math.PI / 12), 0, Math.cos(Math.PI / 12)], 1e-15);
});

// measures.md asks for 1e-7 rad; the usual formulas are off by 1e-4 to 4e-2 rad here, or return zero.
test.each([1e-2, 1e-4, 1e-6, 1e-8, 1.1e-9])('lands on a target %s rad off straight behind', (offRad) => {
  const way: Vec3 = [0.6 * Math.sin(offRad), 0.8 * Math.sin(offRad), -Math.cos(offRad)];
  const z = column(vaneAt(way), 'vane', 'z');
  expectClose(Math.hypot(...z.map((part, i) => part - way[i])), 0, 1e-15);
});

test('keeps size and drops shear, with its flag', () => {
  const rig = rigOf([
    bone('kite', { at: [1, 2, 3] }),
    bone('post'),
    bone('vane', {
      parent: 'post',
      turned: [0, 0.5, 0, Math.sqrt(0.75)],
      links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }],
    }),
  ]);
  const result = solveRig(rig, { bones: { post: { size: [1, 1, 2] }, vane: { size: [1, 3, 1] } } });
  expect(result.flags).toEqual([{ flag: 'shear', bone: 'vane', link: 'watch' }]);
  const [x, y, z] = (['x', 'y', 'z'] as const).map((axis) => column(result, 'vane', axis));
  const dot = (a: number[], b: number[]) => a.reduce((sum, part, i) => sum + part * b[i], 0);
  expectClose([dot(x, y), dot(y, z), dot(z, x)], [0, 0, 0], 1e-15);
  // The length of z of a post twice as long along z, turned by 60° about y: √(sin² + 4 cos²) = √(0.75 + 1).
  expectClose(Math.sqrt(dot(z, z)), Math.sqrt(1.75), 1e-15);
  expectClose(Math.sqrt(dot(y, y)), 3, 1e-15);
});
