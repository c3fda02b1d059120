import { expect, test } from 'vitest';
import { gradeWork, markingOf } from '../../src/grader/grade.ts';
import { messageOf } from '../../src/grader/index.ts';
import { bone, exerciseOf, rigOf } from './requirements/quay.ts';

const kite = bone('kite', null, [0, 0, 2]);
const vane = bone('vane', null, [0, 0, 0]);
const inputs = [{ id: 'aside', bone: 'kite', channel: 'move.x', min: 0, max: 2 }];

test.each([
  [
    'that a requirement speaks of',
    [kite],
    { kind: 'aims-at', bone: 'vane', target: { bone: 'kite' }, allowed: 1 },
    'vane',
  ],
  [
    'that an input moves',
    [vane],
    { kind: 'holds-still', bone: 'vane', moving: ['aside'], by: 'turn', allowed: 1 },
    'kite',
  ],
])('a bone of the start %s and that is gone is told by its name', (_, bones, asked, name) => {
  const exercise = exerciseOf(rigOf([kite, vane]), inputs, asked);
  const [result] = gradeWork(markingOf(exercise), { rig: rigOf(bones) }).requirements;
  expect(result).toMatchObject({ status: 'missed', measured: null, cause: { why: 'gone', bone: name } });
  expect(messageOf(exercise, result!)).toBe(`The rig no longer has ${name}, which was given.`);
});
