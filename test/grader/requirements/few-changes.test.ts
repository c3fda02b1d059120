import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const watch = { name: 'watch', kind: 'aim', target: { bone: 'kite' } };
const map = {
  keys: [
    [0, 1],
    [1, 0],
  ],
};
const nod = {
  name: 'nod',
  inputs: [{ from: { turn: { bone: 'kite', axis: 'y' } } }],
  map,
  output: { bone: 'vane', channel: 'turn.x' },
};
const quay = (link: object, more: object = {}, drivers: object[] = []) =>
  rigOf([bone('kite', null, [0, 0, 2]), bone('vane', null, [0, 0, 0], { links: [link], ...more })], { drivers });

test('fields, links and drivers that differ count, however they are written', () => {
  const exercise = exerciseOf(quay(watch), [], { kind: 'few-changes', allowed: 2 });
  expectMet(found(exercise), 0);
  expectMet(found(exercise, { rig: quay({ ...watch, weight: 1, axis: '+z' }) }), 0);
  expectMet(found(exercise, { rig: quay({ ...watch, weight: 0.5 }, { role: 'skin' }) }), 2);
  const other = { name: 'other', kind: 'follow', source: 'kite' };
  // One link gone, one new.
  expectMet(found(exercise, { rig: quay(other) }), 2);
  expectMissed(found(exercise, { rig: quay(other, {}, [nod]) }), 3);
});
