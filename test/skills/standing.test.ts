import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/skills/attempt.ts';
import { standingOf } from '../../src/skills/standing.ts';
import { AIDED, attempt, BY_ID, FAILED, noon } from './support/course.ts';

const standing = (attempts: Attempt[], skill = 'shortest-turn') => standingOf(skill, attempts, BY_ID);
const vane = (seed: number, change: Partial<Attempt> = {}) => attempt('one-vane', seed, change);

describe('mastery', () => {
  test('nothing tried is not begun', () => {
    expect(standing([])).toEqual({ is: 'not-begun' });
    expect(standing([attempt('flinch', 0)])).toEqual({ is: 'not-begun' });
  });

  test('three different items in a row are mastery, two are not', () => {
    expect(standing([vane(0), vane(1)])).toEqual({ is: 'under-way', inARow: 2, tries: 2 });
    const third = vane(2);
    expect(standing([vane(0), vane(1), third])).toMatchObject({ is: 'known', since: third.when });
  });

  test.each([
    ['a fail', FAILED],
    ['help', AIDED],
  ])('%s starts the row again', (_what, change) => {
    const broken = [vane(0), vane(1), attempt('many-vanes', 0, change)];
    expect(standing(broken)).toEqual({ is: 'under-way', inARow: 0, tries: 3 });
    expect(standing([...broken, vane(2)])).toEqual({ is: 'under-way', inARow: 1, tries: 4 });
  });

  test('an item that is passed is done with: passing it again adds nothing, breaking it takes nothing', () => {
    expect(standing([vane(0), vane(0), vane(0)])).toEqual({ is: 'under-way', inARow: 1, tries: 1 });
    expect(standing([vane(0), vane(1), vane(1, FAILED)])).toEqual({ is: 'under-way', inARow: 2, tries: 2 });
  });

  test('a seed that comes out as an item already in the row does not lengthen it', () => {
    expect(standing([vane(0), vane(1), vane(3)])).toEqual({ is: 'under-way', inARow: 2, tries: 3 });
  });

  test('an attempt that names no skills is of those its exercise asks for', () => {
    const unnamed = [vane(0), vane(1), vane(2)].map((each) => ({ ...each, skills: [] }));
    expect(standing(unnamed)).toMatchObject({ is: 'known' });
  });

  test('an exercise that the course no longer has counts nowhere', () => {
    expect(standing([{ ...vane(0), exercise: 'gone' }])).toEqual({ is: 'not-begun' });
  });

  test('a repair whose fault was not named does not count for naming faults, but does for the rest', () => {
    const repairs = [0, 1, 2].map((seed) => attempt('flinch', seed, { named: seed !== 1 }));
    expect(standing(repairs, 'diagnose')).toEqual({ is: 'under-way', inARow: 1, tries: 3 });
    expect(standing(repairs, 'in-line-at-rest')).toMatchObject({ is: 'known' });
  });
});

describe('review', () => {
  const mastered = [0, 1, 2].map((seed) => vane(seed));
  const scheduleAfter = (reviews: Attempt[]) => {
    const stands = standing([...mastered, ...reviews]);
    if (stands.is !== 'known') throw new Error('not known');
    return stands;
  };

  test('what is known stays known, and a review that fails brings the next one nearer', () => {
    const good = scheduleAfter([vane(3, { when: noon(2) })]);
    const failed = scheduleAfter([vane(3, { when: noon(2), ...FAILED })]);
    const aided = scheduleAfter([vane(3, { when: noon(2), ...AIDED })]);
    expect(failed.lastWent).toBe('failed');
    expect(failed.schedule.due).toBeLessThan(aided.schedule.due);
    expect(aided.schedule.due).toBeLessThan(good.schedule.due);
    expect(good.since).toBe(mastered[2]!.when);
  });

  test('the first proof of a variant is the review; what it then takes to get it right is not', () => {
    const failed = scheduleAfter([vane(3, { when: noon(2), ...FAILED })]);
    const mended = scheduleAfter([vane(3, { when: noon(2), ...FAILED }), vane(3, { when: noon(2) + 60_000 })]);
    expect(mended).toEqual(failed);
  });

  test('items passed before mastery are no reviews', () => {
    expect(scheduleAfter([vane(1, { when: noon(9), ...FAILED })])).toEqual(scheduleAfter([]));
  });
});
