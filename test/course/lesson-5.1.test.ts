import { describe, expect, test } from 'vitest';
import { readPose, readRig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/5.1-a-switch-on-a-control';
const ferry = rigOf(`${folder}/ferry.json`);
const steps = rigOf(`${folder}/ferry-steps.json`);
const openAtRest = rigOf(`${folder}/ferry-default.json`);

const at = (open: number) => ({ switches: { 'grip.open': open } });

/** Degrees that the hatch has lifted, and the height of its edge in metres. */
function hatch(rig: typeof ferry, pose = {}) {
  const { axis, base } = solved(rig, pose);
  const [, y, z] = axis('hatch', 'z') as [number, number, number];
  return { liftedDeg: (Math.atan2(y, z) * 180) / Math.PI, edge: base('hatch')[1]! + 0.7 * y };
}

// Check values: the arithmetic on the page.
describe('lesson 5.1 says what the solver does', () => {
  test.each([
    [0, 0, 0.62],
    [0.25, 17.5, 0.83],
    [0.5, 35, 1.022],
    [0.75, 52.5, 1.175],
    [1, 70, 1.278],
  ])('the table: open %d', (open, liftedDeg, edge) => {
    expectClose(hatch(ferry, at(open)).liftedDeg, liftedDeg, 1e-9);
    expectClose(hatch(ferry, at(open)).edge, edge, 5.1e-4);
  });

  test('the edge rises by 21 cm in the first quarter and by 10 in the last', () => {
    const [first, , , last] = [0, 0.25, 0.5, 0.75].map(
      (open) => hatch(ferry, at(open + 0.25)).edge - hatch(ferry, at(open)).edge,
    );
    expectClose([first!, last!], [0.21, 0.1], 5e-3);
  });

  test('21° is three tenths of the way', () => {
    expectClose(hatch(ferry, at(0.3)).liftedDeg, 21, 1e-9);
  });

  test('a pose beyond the range, or between the ends of one that does not slide, is refused', () => {
    expect(readPose(at(0.3), ferry).ok).toBe(true);
    expect(readPose(at(1.3), ferry)).toMatchObject({ ok: false });
    expect(readPose(at(0.3), steps)).toMatchObject({ ok: false });
    expect([0, 1].map((open) => readPose(at(open), steps).ok)).toEqual([true, true]);
  });

  test('what a driver writes to a switch is brought back, to the nearer end, at a tie to the lower', () => {
    const lifted = [-0.2, 0.4, 0.5, 0.7, 1.3].map((written) => {
      const set = { name: 'set', inputs: [{ from: { switch: 'grip.wish' } }], map: ferry.drivers![0]!.map };
      const keys = [
        [0, written],
        [1, written],
      ] as const;
      const grip = {
        ...steps.bones[2]!,
        switches: [...steps.bones[2]!.switches!, { name: 'wish', min: 0, max: 1, default: 0 }],
      };
      const bones = [...steps.bones.slice(0, 2), grip];
      const drivers = [...steps.drivers!, { ...set, map: { keys }, output: { switch: 'grip.open' } }];
      return hatch({ ...steps, bones, drivers }).liftedDeg;
    });
    expectClose(lifted, [0, 0, 0, 70, 70], 1e-9);
  });

  test('at rest a switch stands at its default', () => {
    expectClose([hatch(ferry).liftedDeg, hatch(openAtRest).liftedDeg], [0, 70], 1e-9);
    const [hull, lid, grip] = ferry.bones;
    const outside = { ...grip!, switches: [{ ...grip!.switches![0]!, default: 2 }] };
    expect(readRig({ ...ferry, bones: [hull!, lid!, outside] }).ok).toBe(false);
  });

  test('a driver that reads a switch which is not there is refused', () => {
    const [driver] = ferry.drivers!;
    const lost = { ...driver!, inputs: [{ from: { switch: 'hatch.open' } }] };
    expect(readRig({ ...ferry, drivers: [lost] })).toMatchObject({ ok: false });
  });
});
