import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

const inputs = [{ id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 }];
const asked = { kind: 'moves-with', bone: 'gull', with: 'kite', moving: ['aside'], by: 'move', allowed: 1 };
const sky = (parent: string | null) => rigOf([bone('kite', null, [0, 0, 2]), bone('gull', parent, [0, 1, 2])]);

test('a gull left behind is 2 m from where the kite would carry it', () => {
  const exercise = exerciseOf(sky(null), inputs, asked);
  expectMissed(found(exercise), 2000);
  expectMet(found(exercise, { rig: sky('kite') }), 0);
});
