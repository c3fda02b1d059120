import { describe, expect, test } from 'vitest';
import { grade } from '../../src/grader/index.ts';
import { sixDigits } from '../../src/grader/round.ts';
import { compile, type Pose, readPose, solve } from '../../src/solver/index.ts';
import { answerTo, exerciseFor, markingFor } from '../support/exercises.ts';

const marking = markingFor('one-vane');
const { exercise } = marking;

function moved(pose: Pose): number {
  const values = Object.values(pose.bones ?? {}).flatMap(({ move, turn }) => [
    ...(move ?? []),
    ...(turn && 'angles' in turn ? turn.angles : []),
  ]);
  return values.filter((value) => value !== 0).length + Object.keys(pose.switches ?? {}).length;
}

describe.each(exercise.wrongTurns.map((wrong) => [wrong.id, wrong] as const))('the wrong turn %s', (_, wrong) => {
  const result = grade(marking, answerTo(exercise, wrong.rig, wrong.parts));
  const missed = result.requirements.filter(({ status }) => status === 'missed');

  test('misses what it says and is told apart', () => {
    expect(missed.map(({ id }) => id)).toEqual(expect.arrayContaining([...wrong.misses]));
    for (const one of missed.filter(({ id }) => wrong.misses.includes(id))) expect(one.diagnosis).toBe(wrong.id);
  });

  test('is shown in a pose of at most two moved channels that the rig can take', () => {
    const shown = missed.flatMap(({ counterpose }) => counterpose ?? []);
    for (const pose of shown) {
      expect(readPose(pose, wrong.rig).ok).toBe(true);
      expect(moved(pose)).toBeLessThanOrEqual(2);
    }
  });
});

describe('the number shown with a counterpose', () => {
  test('is what the solver gives in that pose, measured here by plain trigonometry', () => {
    const wrong = exercise.wrongTurns.find(({ misses }) => misses.some((id) => kindOf(id) === 'aims-at'))!;
    const result = grade(marking, answerTo(exercise, wrong.rig, wrong.parts));
    const shown = result.requirements.find(({ kind, status }) => kind === 'aims-at' && status === 'missed')!;
    const asked = exercise.requirements.find(({ id }) => id === shown.id)!;
    if (asked.kind !== 'aims-at' || typeof asked.axis === 'object') throw new Error('the test wants a named axis');
    const [sign, letter] = asked.axis ?? '+z';
    const compiled = compile(wrong.rig);
    if (!compiled.ok) throw new Error('the rig should evaluate');
    const { bones } = solve(compiled.program, shown.counterpose!);
    const nameOf = (spoken: string) => exercise.parts.find(({ id }) => id === spoken)?.name ?? spoken;
    const self = bones[nameOf(asked.bone)]!.matrix;
    const target = bones[nameOf(asked.target.bone)]!.matrix;
    const along =
      (asked.target.at ?? 0) * wrong.rig.bones.find(({ name }) => name === nameOf(asked.target.bone))!.rest.length;
    const toward = [0, 1, 2].map((i) => target[12 + i]! + along * target[8 + i]! - self[12 + i]!);
    const column = 4 * 'xyz'.indexOf(letter!);
    const axis = [0, 1, 2].map((i) => self[column + i]! * (sign === '-' ? -1 : 1));
    const dot = toward.reduce((sum, x, i) => sum + x * axis[i]!, 0);
    const angle = (Math.acos(dot / Math.hypot(...toward) / Math.hypot(...axis)) * 180) / Math.PI;
    expect(shown.measured).toBe(sixDigits(shown.measured!));
    expect(Math.abs(angle - shown.measured!)).toBeLessThan(1e-3);
    expect(shown.measured!).toBeGreaterThan(shown.allowed);
  });

  function kindOf(id: string) {
    return exercise.requirements.find((one) => one.id === id)?.kind;
  }
});

describe('the same fault', () => {
  test('gives the same counterpose whatever the seed of the fill', () => {
    const wrong = exercise.wrongTurns[0]!;
    const poses = [0, 1, 2, 3, 4].map((n) => {
      const seed = n * exercise.wrongTurns.length * 1000;
      const variant = { ...exerciseFor('one-vane', 0), seed };
      return JSON.stringify(
        grade({ ...marking, exercise: variant }, answerTo(variant, wrong.rig)).requirements.map(
          (one) => one.counterpose,
        ),
      );
    });
    expect(new Set(poses).size).toBe(1);
  });
});
