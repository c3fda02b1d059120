import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [
  { id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 },
  { id: 'together', switch: 'kite.together', min: 0, max: 1 },
];
const watch = { name: 'watch', kind: 'aim', target: { bone: 'kite' } };
const switches = [{ name: 'together', min: 0, max: 1, default: 0, sliding: true }];
const letGo = {
  name: 'let_go',
  inputs: [{ from: { switch: 'kite.together' } }],
  map: {
    keys: [
      [0, 1],
      [1, 0],
    ],
  },
  output: { bone: 'vane', link: 'watch', field: 'weight' },
};
const quay = (drivers: object[]) =>
  rigOf([bone('kite', null, [0, 0, 2], { switches }), bone('vane', null, [0, 0, 0], { links: [watch] })], { drivers });
const asked = (ends: object[]) => ({
  kind: 'hands-over',
  bone: 'vane',
  switch: 'together',
  by: 'turn',
  ends,
  allowed: 1,
});

test('what should have let go still turns the vane by 45°', () => {
  const exercise = exerciseOf(quay([]), inputs, asked([{ value: 1, governs: [], lets: ['aside'], least: 10 }]));
  expectMissed(found(exercise), 45);
  expectMet(found(exercise, { rig: quay([letGo]) }), 0);
});

test('what should govern turns it by 45°, which is 5° short of 50° and enough for 40°', () => {
  const end = (least: number) => asked([{ value: 0, governs: ['aside'], lets: [], least }]);
  expectMissed(found(exerciseOf(quay([letGo]), inputs, end(50))), 5);
  expectMet(found(exerciseOf(quay([letGo]), inputs, end(40))), 0);
});
