import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [{ id: 'ahead', bone: 'kite', channel: 'move.z', min: 0, max: 0.5 }];
const asked = { kind: 'keeps-size', bone: 'vane', allowed: 1 };
const quay = (kind: string) =>
  rigOf([
    bone('kite', null, [0, 0, 0.5]),
    bone('vane', null, [0, 0, 0], { links: [{ name: 'to', kind, target: { bone: 'kite' } }] }),
  ]);

test('a span from half a metre to a whole one is longer by 100 %; an aim keeps its size', () => {
  const exercise = exerciseOf(quay('span'), inputs, asked);
  expectMissed(found(exercise), 100);
  expectMet(found(exercise, { rig: quay('aim') }), 0);
});
