import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [{ id: 'yaw', bone: 'vane', channel: 'turn.y', min: 0, max: 60 }];
const asked = { kind: 'stays-within', bone: 'vane', around: 'post', allowed: 31 };
const quay = (links: object[]) => rigOf([bone('post', null, [0, 0, 0]), bone('vane', null, [0, 0, 0], { links })]);

test('60° without a limit, 30° with one', () => {
  const exercise = exerciseOf(quay([]), inputs, asked);
  expectMissed(found(exercise), 60);
  expectMet(found(exercise, { rig: quay([{ name: 'keep', kind: 'limit', yaw: [-30, 30] }]) }), 30);
});
