import { describe, expect, test, vi } from 'vitest';
import { exerciseIds } from '../../src/course/exercise-files.ts';
import { counterposeOf } from '../../src/grader/counterpose.ts';
import type { Exercise } from '../../src/grader/index.ts';
import { channelsOffRest } from '../../src/grader/probe/pose.ts';
import { type Finding, prove } from '../../src/grader/prove.ts';
import { kindOf } from '../../src/grader/requirements/table.ts';
import type { Pose } from '../../src/solver/index.ts';
import { contentDir, exerciseFor } from '../support/exercises.ts';

const exercises = exerciseIds(contentDir).map((id) => exerciseFor(id));
/** Seeds that every wrong turn is proved under; one exercise under 100 always. */
const SEEDS = Number(process.env.COUNTERPOSE_SEEDS ?? 2);
vi.setConfig({ testTimeout: 30_000 + 3000 * SEEDS });

/** Every missed behaviour of a wrong turn with its counterpose. */
function shownBy(exercise: Exercise, wrong: Exercise['wrongTurns'][number]) {
  const proof = prove(exercise, wrong);
  const { prepared } = proof;
  if (!prepared.ok) return [];
  return proof.findings
    .filter(({ status, meter }) => status === 'missed' && meter)
    .map((finding) => ({ finding, ...counterposeOf(prepared.subject, finding) }));
}

/** Whether the ladder alone finds the miss, by a clear margin. */
function isOnLadder(exercise: Exercise, wrong: Exercise['wrongTurns'][number], { requirement }: Finding): boolean {
  const { allowed } = requirement;
  const found = prove(exercise, wrong, 'ladder').findings.find((one) => one.requirement.id === requirement.id)!;
  return isAtLeast(requirement) ? found.measured! * 1.2 < allowed : found.measured! > allowed * 1.2;
}

function isAtLeast(requirement: Finding['requirement']): boolean {
  const kind = kindOf(requirement);
  return kind.about === 'behaviour' && kind.atLeast === true;
}

/** Degrees whole, metres in whole centimetres, sizes in tenths. */
function isRound({ bones = {} }: Pose): boolean {
  const whole = (value: number, unit: number) => Math.abs(value / unit - Math.round(value / unit)) < 1e-6;
  return Object.values(bones).every(
    ({ move = [], turn, size = [] }) =>
      move.every((value) => whole(value, 0.01)) &&
      (turn && 'angles' in turn ? turn.angles : []).every((value) => whole(value, 1)) &&
      size.every((value) => whole(value, 0.1)),
  );
}

test('at most two inputs are moved in at least 95 of 100, and nearly all are round', () => {
  const shown = exercises.flatMap((exercise) => exercise.wrongTurns.flatMap((wrong) => shownBy(exercise, wrong)));
  expect(shown.length).toBeGreaterThan(100);
  const simple = shown.filter(({ pose }) => channelsOffRest(pose) <= 2);
  expect(simple.length / shown.length).toBeGreaterThanOrEqual(0.95);
  const round = shown.filter(({ pose }) => isRound(pose));
  expect(round.length / shown.length).toBeGreaterThanOrEqual(0.95);
});

test('each shows its miss: what it measures is worse than what is allowed', () => {
  for (const exercise of exercises) {
    for (const { finding, measured } of exercise.wrongTurns.flatMap((wrong) => shownBy(exercise, wrong))) {
      const { requirement } = finding;
      expect(
        isAtLeast(requirement) ? measured < requirement.allowed : measured > requirement.allowed,
        requirement.id,
      ).toBe(true);
    }
  }
});

describe.each(exercises.filter(({ inputs }) => inputs.length > 0).map((one) => [one.id, one] as const))(
  '%s',
  (id, exercise) => {
    const seeds = Array.from({ length: id === 'one-vane' ? 100 : SEEDS }, (_, n) => n + 1);

    test.each(exercise.wrongTurns.map((wrong) => [wrong.id, wrong] as const))(
      'the fault %s gives the same counterpose whatever the seed, wherever the ladder finds it',
      (_, wrong) => {
        const first = shownBy(exercise, wrong).filter(({ finding }) => isOnLadder(exercise, wrong, finding));
        for (const seed of seeds) {
          const again = shownBy({ ...exercise, seed }, wrong);
          for (const { finding, pose } of first) {
            const other = again.find((one) => one.finding.requirement.id === finding.requirement.id);
            expect(JSON.stringify(other?.pose), `${finding.requirement.id}, seed ${seed}`).toBe(JSON.stringify(pose));
          }
        }
      },
    );
  },
);
