import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const quay = rigOf([bone('post', null, [0, 0, 0]), bone('vane', null, [0, 0, 0])]);
const asked = { kind: 'roll-within', bone: 'vane', toward: 'post', allowed: 31 };
const turned = (channel: string, max: number) => ({ id: 'turned', bone: 'vane', channel, min: 0, max });

test('a turn about its own axis is roll; yaw is none', () => {
  expectMissed(found(exerciseOf(quay, [turned('turn.z', 40)], asked)), 40);
  expectMet(found(exerciseOf(quay, [turned('turn.z', 30)], asked)), 30);
  expectMet(found(exerciseOf(quay, [turned('turn.y', 80)], asked)), 0);
});
