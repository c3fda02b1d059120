import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

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
