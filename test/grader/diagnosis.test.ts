import { expect, test } from 'vitest';
import { exerciseIds } from '../../src/course/exercise-files.ts';
import { gradeWork } from '../../src/grader/grade.ts';
import { contentDir, markingFor } from '../support/exercises.ts';
import { heldOutOf } from './heldOut.ts';

/** Of each exercise so many of the held-out mistakes, from all over them; the benchmark tries all. */
const TRIED = 8;

test('at least 90 % of the mistakes shown in ways that are not listed are told rightly', { timeout: 120_000 }, () => {
  const told: boolean[] = [];
  for (const id of exerciseIds(contentDir)) {
    const marking = markingFor(id);
    const all = heldOutOf(marking.exercise);
    const step = Math.max(1, Math.ceil(all.length / TRIED));
    for (const { candidate, shows } of all.filter((_, index) => index % step === 0)) {
      const { requirements } = gradeWork(marking, candidate);
      told.push(requirements.some(({ diagnosis }) => diagnosis !== null && shows.includes(diagnosis)));
    }
  }
  expect(told.length).toBeGreaterThan(50);
  expect(told.filter(Boolean).length / told.length).toBeGreaterThanOrEqual(0.9);
});

test('what is told of one miss is not belied by what is met', () => {
  const marking = markingFor('one-channel-open');
  const { exercise } = marking;
  const untied = exercise.wrongTurns.find(({ id }) => id === 'not-tied')!;
  const rig = {
    ...untied.rig,
    bones: untied.rig.bones.map((bone) => (bone.name === 'hoist' ? { ...bone, locks: {} } : bone)),
  };
  const { requirements } = gradeWork(marking, { ...untied, rig });
  const told = requirements.filter(({ status }) => status === 'missed').map(({ id, diagnosis }) => [id, diagnosis]);
  expect(told).toContainEqual(['turns', 'not-tied']);
  expect(told).toContainEqual(['shut-size', 'all-open']);
});

test('of an untouched start nothing is told that is said of something built', () => {
  const marking = markingFor('one-vane');
  const { requirements } = gradeWork(marking, { rig: marking.exercise.start });
  expect(requirements.filter(({ status }) => status === 'missed')).not.toEqual([]);
  expect(requirements.map(({ diagnosis }) => diagnosis)).toEqual(requirements.map(() => null));
});

test('what is told holds of what was changed, not only of how much', () => {
  const told = (change: object) => {
    const marking = markingFor('boom-off-its-pin');
    const { start } = marking.exercise;
    const bones = start.bones.map((bone) => (bone.name === 'boom' ? { ...bone, ...change } : bone));
    const { requirements } = gradeWork(marking, { rig: { ...start, bones } });
    return requirements.flatMap(({ diagnosis }) => diagnosis ?? []);
  };
  expect(told({})).toContain('base-behind');
  // The base stays behind, and another field than that of the listed mistake is changed.
  expect(told({ parent: 'joint_mark' })).not.toContain('mark-moved');
  // The mark is where it was, as a met requirement says.
  const ride = { name: 'ride', kind: 'follow', source: 'joint_mark', channels: ['move'] };
  expect(told({ links: [ride] })).not.toContain('mark-moved');
});
