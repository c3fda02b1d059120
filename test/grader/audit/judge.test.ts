import { describe, expect, test } from 'vitest';
import { breaks } from '../../../src/grader/audit/judge.ts';
import { editRig } from '../../../src/grader/exercise/editRig.ts';
import { prove } from '../../../src/grader/prove.ts';
import { type Subject, subjectOf } from '../../../src/grader/subject.ts';
import { readRig } from '../../../src/solver/index.ts';
import { mustRead } from '../../solver/document/trial.ts';
import { markingOfSmall } from './fitting.ts';

const { exercise } = markingOfSmall();
const [points] = exercise.requirements;

/** The right rig, but with the kite at a hundredth of its way aside the vane turns off by up to 20°. */
function needleAt(middle: number) {
  const spike = [
    [-3, 0],
    [middle - 0.02, 0],
    [middle, 20],
    [middle + 0.02, 0],
    [3, 0],
  ];
  const driver = {
    inputs: [{ from: { shift: { bone: 'kite', axis: 'x' } } }],
    map: { keys: spike },
    output: { bone: 'sting', channel: 'turn.y' },
  };
  const off = { kind: 'follow', source: 'sting', channels: ['turn'], offset: 'keep' };
  const still = { inputs: driver.inputs, map: { keys: spike.map(([x, y]) => [x, y! / 20]) } };
  const edit = {
    bones: {
      sting: { parent: null, role: 'helper', rest: { base: [0, 1, 0], turn: [0, 0, 0, 1], length: 0.1 } },
      vane: { links: { off } },
    },
    drivers: { sting: driver, only: { ...still, output: { bone: 'vane', link: 'off', field: 'weight' } } },
  };
  return mustRead(readRig(editRig(exercise.references[0]!.rig, edit)));
}

function prepared(rig: ReturnType<typeof needleAt>): Subject {
  const found = subjectOf(exercise, rig);
  if (!found.ok) throw new Error('the rig should evaluate');
  return found.subject;
}

const needles = [-1.87, -1.31, -0.77, -0.23, 0.37, 0.71, 1.13, 1.79];

describe.each(needles)('a fault in a hundredth of the poses, at %f', (middle) => {
  const rig = needleAt(middle);

  test('is missed by a coarse grid', () => {
    const at = (n: number, { min, max }: { min: number; max: number }) => min + ((max - min) * n) / 10;
    const [aside, up, yaw] = exercise.inputs;
    const grid = Array.from({ length: 11 ** 3 }, (_, n) => ({
      aside: at(n % 11, aside!),
      up: at(Math.floor(n / 11) % 11, up!),
      yaw: at(Math.floor(n / 121), yaw!),
    }));
    const measured = grid.map((inputs) => prove(exercise, { rig, inputs }).findings[0]!.status);
    expect(new Set(measured)).toEqual(new Set(['met']));
  });

  test('is found by the judge', () => {
    expect(breaks([points!], prepared(rig), 700, 29)).toBe(true);
  });

  test('is found by the proof', () => {
    expect(prove(exercise, { rig }).findings[0]!.status).toBe('missed');
  });
});

test('a right rig breaks nothing under the judge', () => {
  for (const { rig } of exercise.references) {
    for (const requirement of exercise.requirements) {
      expect(breaks([requirement], prepared(rig), 700, 29), requirement.id).toBe(false);
    }
  }
});

test('one that is broken is found among others that are not', () => {
  const subject = prepared(needleAt(0.37));
  expect(breaks(exercise.requirements, subject, 700, 29)).toBe(true);
  expect(
    breaks(
      exercise.requirements.filter((one) => one !== points),
      subject,
      700,
      29,
    ),
  ).toBe(false);
});
