import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [{ id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 }];
const asked = { kind: 'holds-still', bone: 'vane', moving: ['aside'], by: 'move', allowed: 1 };
const quay = (links: object[]) => rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0], { links })]);

test('a vane that follows the kite goes 2 m with it', () => {
  const exercise = exerciseOf(quay([]), inputs, asked);
  expectMet(found(exercise), 0);
  const after = { name: 'after', kind: 'follow', source: 'kite', offset: 'keep' };
  expectMissed(found(exercise, { rig: quay([after]) }), 2000);
});
