import { expect, test } from 'vitest';
import { assignmentIn, keptHash, keptIn } from '../../../src/course/assign/open/hash.ts';
import { standWords } from '../../../src/course/assign/open/stand-words.ts';

test('an address holds an assignment, the id of a kept one, or neither', () => {
  expect(assignmentIn('#eyJh.eyJj.c2ln')).toBe('eyJh.eyJj.c2ln');
  expect(assignmentIn('#text')).toBeNull();
  expect(assignmentIn('')).toBeNull();
  expect(keptIn(keptHash('on-the-quay-0a1b2c'))).toBe('on-the-quay-0a1b2c');
  expect(keptIn('#kept/../x')).toBeNull();
  expect(keptIn('#eyJh.eyJj.c2ln')).toBeNull();
});

const proofs = (...marks: number[]) => marks.map((mark) => ({ mark }));

test.each([
  [proofs(), undefined, 'Not proved yet.'],
  [proofs(), 3, 'None of 3 attempts made.'],
  [proofs(0.5), undefined, 'One proof, best so far 50 %, as found here.'],
  [proofs(0.5, 0.25), 3, '2 of 3 attempts made, best so far 50 %, as found here.'],
  // What lies beyond the attempts does not count, however good.
  [proofs(0.5, 1), 1, '2 proofs, of which the first counts; best so far 50 %, as found here.'],
  [proofs(0.5, 0.75, 1), 2, '3 proofs, of which the first 2 count; best so far 75 %, as found here.'],
])('%j of %s attempts: %s', (proved, attempts, words) => {
  expect(standWords(proved, attempts)).toBe(words);
});
