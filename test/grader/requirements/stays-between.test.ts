import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [{ id: 'together', switch: 'kite.together', min: 0, max: 1 }];
const switches = [{ name: 'together', min: 0, max: 1, default: 0, sliding: true }];
const sky = (keys: number[][]) =>
  rigOf([bone('kite', null, [0, 0, 0], { switches }), bone('gull', null, [0, 1, 0])], {
    drivers: [
      {
        name: 'drift',
        inputs: [{ from: { switch: 'kite.together' } }],
        map: { keys },
        output: { bone: 'gull', channel: 'move.x' },
      },
    ],
  });

test('there and back strays by the whole metre; straight there strays by nothing', () => {
  const exercise = exerciseOf(
    sky([
      [0, 0],
      [0.5, 1],
      [1, 0],
    ]),
    inputs,
    {
      kind: 'stays-between',
      bone: 'gull',
      switch: 'together',
      by: 'move',
      allowed: 1,
    },
  );
  expectMissed(found(exercise), 1000);
  expectMet(
    found(exercise, {
      rig: sky([
        [0, 0],
        [1, 1],
      ]),
    }),
    0,
  );
});
