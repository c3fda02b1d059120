import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

// To one side 2 m (45°), to the other 1 m (26.565°, the arctangent of ½): the lesser counts.
const aside = { id: 'aside', bone: 'kite', channel: 'move.x', min: -1, max: 2 };
const asked = { kind: 'answers-to', bone: 'vane', input: 'aside', by: 'turn', allowed: 20 };
const watch = { name: 'watch', kind: 'aim', target: { bone: 'kite' } };
const quay = (links: object[], more = {}) =>
  rigOf([bone('kite', null, [0, 0, 2], more), bone('vane', null, [0, 0, 0], { links })]);

test('a vane that watches answers; one that does not, or a kite that is locked, does not', () => {
  const exercise = exerciseOf(quay([]), [aside], asked);
  expectMet(found(exercise, { rig: quay([watch]) }), 26.5651);
  expectMissed(found(exercise), 0);
  expectMissed(found(exercise, { rig: quay([watch], { locks: { move: [true, false, false] } }) }), 0);
});
