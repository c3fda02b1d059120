import { test } from 'vitest';
import { bone, exerciseOf, expectMet, expectMissed, found, rigOf } from './quay.ts';

// A tetrahedron, all of it on one bone.
const mesh = {
  positions: [0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1],
  triangles: [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3],
};
const bellows = rigOf([bone('bellows', null, [0, 0, 0], { role: 'skin' })], { mesh });
const asked = { kind: 'keeps-volume', allowed: 1 };

test('twice as wide is twice the volume; turned is the same', () => {
  const wider = { id: 'wider', bone: 'bellows', channel: 'size.x', min: 1, max: 2 };
  expectMissed(found(exerciseOf(bellows, [wider], asked)), 100);
  const turned = { id: 'turned', bone: 'bellows', channel: 'turn.y', min: 0, max: 90 };
  expectMet(found(exerciseOf(bellows, [turned], asked)), 0);
});
