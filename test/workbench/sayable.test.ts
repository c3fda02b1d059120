import { describe, expect, test } from 'vitest';
import { responseKindOf } from '../../src/grader/index.ts';
import { exerciseFor, openedExercises } from '../support/exercises.ts';
import { nextDeed } from '../support/saying/nearest.ts';

const MOST = 200;

describe('every reference can be built by what the page offers', { timeout: 60_000 }, () => {
  // The banner aims the axis that a new aim would hold up.
  for (const exercise of [...openedExercises(), exerciseFor('lamp-upright', 3)]) {
    if (responseKindOf(exercise.kind) && exercise.kind !== 'shape') continue;
    for (const { id, rig } of exercise.references) {
      test(`${exercise.id}, ${exercise.structure}, ${id}`, () => {
        let draft = { rig: exercise.start, parts: {} };
        let count = 0;
        for (;;) {
          const next = nextDeed(draft, rig!, exercise);
          if (!next) break;
          draft = { ...draft, ...next.draft };
          expect(++count).toBeLessThan(MOST);
        }
      });
    }
  }
});
