import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf, upright } from './quay.ts';

const inputs = [{ id: 'aside', bone: 'kite_left', channel: 'move.x', min: 0, max: 2 }];
const asked = { kind: 'mirrors', bones: ['vane_right'], others: ['vane_left'], by: 'turn', allowed: 1 };
const watch = (side: string) => ({ links: [{ name: 'watch', kind: 'aim', target: { bone: `kite_${side}` } }] });
const twins = (right: object) =>
  rigOf([
    bone('kite_left', null, [1, 0, 2]),
    bone('kite_right', null, [-1, 0, 2]),
    bone('vane_left', null, [1, 0, 0], watch('left')),
    bone('vane_right', null, [-1, 0, 0], right),
  ]);

test('one side that watches and one that does not differ by 45°', () => {
  const exercise = exerciseOf(twins({}), inputs, asked);
  expectMissed(found(exercise), 45);
  expectMet(found(exercise, { rig: twins(watch('right')) }), 0);
});

test('two sides that turn in another order are no mirror images, since a mirrored pose has the same angles', () => {
  const turning = [
    { id: 'lift', bone: 'wing_left', channel: 'turn.x', min: -40, max: 40 },
    { id: 'beat', bone: 'wing_left', channel: 'turn.z', min: -60, max: 60 },
  ];
  const wings = (more: object) =>
    rigOf([bone('wing_left', null, [1, 0, 0]), bone('wing_right', null, [-1, 0, 0], more)]);
  const exercise = exerciseOf(wings({}), turning, { ...asked, bones: ['wing_right'], others: ['wing_left'] });
  expectMet(found(exercise), 0);
  const measured = found(exercise, { rig: wings({ turnOrder: 'zyx' }) });
  expectMissed(measured, measured.measured!);
});

test('two bones of the skin are to be as long as each other; of others the length is not asked', () => {
  const moving = [{ id: 'nod', bone: 'wing_left', channel: 'turn.x', min: -40, max: 40 }];
  const wings = (role: string, length: number) =>
    rigOf([
      bone('wing_left', null, [1, 0, 0], { role }),
      bone('wing_right', null, [-1, 0, 0], { role, rest: { base: [-1, 0, 0], turn: upright, length } }),
    ]);
  const pair = { ...asked, bones: ['wing_right'], others: ['wing_left'], by: 'move' };
  for (const [role, offMm] of [
    ['skin', 200],
    ['control', 0],
  ] as const) {
    const exercise = exerciseOf(wings(role, 0.5), moving, pair);
    expectMet(found(exercise), 0);
    const measured = found(exercise, { rig: wings(role, 0.3) });
    if (offMm > 0) expectMissed(measured, offMm);
    else expectMet(measured, 0);
  }
});
