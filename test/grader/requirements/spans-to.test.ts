import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const asked = { kind: 'spans-to', bone: 'gauge', target: { bone: 'kite' }, allowed: 1 };
const quay = (links: object[]) => rigOf([bone('kite', null, [0, 0, 2]), bone('gauge', null, [0, 0, 0], { links })]);

test('a gauge of half a metre ends 1.5 m before the kite; a span ends at it', () => {
  const exercise = exerciseOf(quay([]), [], asked);
  expectMissed(found(exercise), 1500);
  expectMet(found(exercise, { rig: quay([{ name: 'to', kind: 'span', target: { bone: 'kite' } }]) }), 0);
});
