import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const aside = { id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 };
const asked = { kind: 'as-reference', bones: ['vane'], reference: 'watching', by: 'turn', allowed: 1 };
const edit = { bones: { vane: { links: { watch: { kind: 'aim', target: { bone: 'kite' } } } } } };
const start = rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0])]);

test('what stands still is 45° from the reference, which is 0 from itself', () => {
  const references = [{ id: 'watching', says: 'It watches.', edit }];
  const exercise = exerciseOf(start, [aside], asked, { references });
  expectMissed(found(exercise), 45);
  expectMet(found(exercise, { rig: exercise.references[0]!.rig }), 0);
});
