import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

// A kite 2 m ahead that flies 2 m aside: 45° by the tangent of 1.
const aside = { id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 };
const asked = { kind: 'aims-at', bone: 'vane', target: { bone: 'kite' }, allowed: 1 };
const quay = (links: object[]) => rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0], { links })]);

test('a vane that watches points at the kite; one that does not is 45° off', () => {
  const exercise = exerciseOf(quay([]), [aside], asked);
  expectMissed(found(exercise), 45);
  expectMet(found(exercise, { rig: quay([{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }]) }), 0);
});

// The quay is a line 2 m long across x = 0. From half way along it the kite, 2 m ahead and 2 m aside, stands at 45°. The
// vane stands 1 m aside, so the kite itself lies at atan(1/2) = 26.5651° and is 18.4349° off.
test('in parallel with the line from another point is not at the target', () => {
  const from = { bone: 'quay', at: 0.5 };
  const parallel = { ...asked, from };
  const rig = (turn: number[]) =>
    rigOf([
      bone('kite', null, [0, 0, 2]),
      bone('quay', null, [1, 0, 0], {
        rest: { base: [1, 0, 0], turn: [0, -Math.SQRT1_2, 0, Math.SQRT1_2], length: 2 },
      }),
      bone('vane', null, [1, 0, 0], { rest: { base: [1, 0, 0], turn, length: 0.3 } }),
    ]);
  const eighth = [0, 0.3826834323650898, 0, 0.9238795325112867];
  const still = { ...aside, min: -2, max: 2 };
  const held = { at: { aside: 2 } };
  expectMet(found(exerciseOf(rig(eighth), [still], { ...parallel, ...held })), 0);
  expectMissed(found(exerciseOf(rig(eighth), [still], { ...asked, ...held })), 18.4349);
});
