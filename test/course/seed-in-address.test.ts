import { expect, test } from 'vitest';
import { queryFor, seedIn } from '../../src/course/site/seed-in-address.ts';

test.each([0, 1, 7, 2 ** 48 - 1])('the seed %d comes back from its address', (seed) => {
  expect(seedIn(queryFor(seed))).toBe(seed);
});

test.each(['', '?seed=', '?seed=-1', '?seed=0.5', '?seed=1e3', '?seed=281474976710656', '?seed=seven', '?other=3'])(
  'the query "%s" asks for none, and the page shows the variant it tells of',
  (query) => {
    expect(seedIn(query)).toBe(0);
  },
);
