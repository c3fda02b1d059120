import { expect, test } from 'vitest';
import { listed } from '../../../src/grader/probe/listed.ts';

test('a pose that comes again points to where it stood first', () => {
  const poses = [
    [0, 1],
    [1, 0],
    [0, 1],
    [0.1, 0],
    [1, 0],
    [0, 1],
  ].map((values) => Float64Array.from(values));
  const { list, firstAt } = listed(poses);
  expect([...firstAt]).toEqual([0, 1, 0, 3, 1, 0]);
  expect(list.map((values) => [...values])).toEqual(poses.map((values) => [...values]));
  expect(list[5]).toBe(list[0]);
});
