import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [{ id: 'together', switch: 'kite.together', min: 0, max: 1 }];
const switches = [{ name: 'together', min: 0, max: 1, default: 0, sliding: true }];
const quay = (map: object) =>
  rigOf(
    [
      bone('kite', null, [2, 0, 2], { switches }),
      bone('vane', null, [0, 0, 0], { links: [{ name: 'watch', kind: 'aim', target: { bone: 'kite' } }] }),
    ],
    {
      drivers: [
        {
          name: 'take',
          inputs: [{ from: { switch: 'kite.together' } }],
          map,
          output: { bone: 'vane', link: 'watch', field: 'weight' },
        },
      ],
    },
  );
const asked = { kind: 'no-jump', bone: 'vane', switch: 'together', by: 'turn', allowed: 6 };

test('45° in eight even steps are 5.625° each; in one they are 45°', () => {
  const exercise = exerciseOf(
    quay({
      keys: [
        [0, 0],
        [1, 1],
      ],
    }),
    inputs,
    asked,
  );
  expectMet(found(exercise), 5.625);
  expectMissed(
    found(exercise, {
      rig: quay({
        keys: [
          [0, 0],
          [0.5, 1],
          [1, 1],
        ],
        shape: 'stepped',
      }),
    }),
    45,
  );
});
