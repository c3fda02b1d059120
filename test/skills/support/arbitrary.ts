import fc from 'fast-check';
import type { Attempt } from '../../../src/skills/attempt.ts';

/** Attempts of few exercises, seeds and times, so that lists overlap and speak against each other. */
export const attempts: fc.Arbitrary<Attempt[]> = fc.array(
  fc.record(
    {
      skills: fc.subarray(['diagnose', 'mirror', 'shortest-turn']),
      exercise: fc.constantFrom('flinch', 'one-vane'),
      seed: fc.nat({ max: 2 }),
      when: fc.nat({ max: 3 }),
      passed: fc.boolean(),
      aided: fc.boolean(),
      named: fc.boolean(),
    },
    { requiredKeys: ['skills', 'exercise', 'seed', 'when', 'passed', 'aided'] },
  ),
  { maxLength: 12 },
);
