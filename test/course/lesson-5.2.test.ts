import { describe, expect, test } from 'vitest';
import type { Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/5.2-input-map-output';
const crane = rigOf(`${folder}/crane.json`);
const threeKeys = rigOf(`${folder}/crane-three-keys.json`);
const radians = rigOf(`${folder}/crane-radians.json`);

/** Metres that the weight has slid towards the mast, with the boom raised by so many degrees. */
const slid = (rig: Rig, raisedDeg: number): number =>
  solved(rig, { bones: { boom: { turn: { angles: [-raisedDeg, 0, 0] } } } }).base('weight')[2]! + 0.8;

// Check values: the arithmetic on the page.
describe('lesson 5.2 says what the solver does', () => {
  test.each([
    [0, 0, 0, 0],
    [15, 0.027, 0.1, 0.054],
    [30, 0.107, 0.2, 0.107],
    [45, 0.234, 0.3, 0.254],
    [60, 0.4, 0.4, 0.4],
  ])('the table at %d°', (raised, wanted, two, three) => {
    expectClose(0.8 * (1 - Math.cos((raised * Math.PI) / 180)), wanted, 5e-4);
    expectClose(slid(crane, raised), two, 1e-12);
    expectClose(slid(threeKeys, raised), three, 5e-4);
  });

  test('the worst that three keys leave is 2.6 cm', () => {
    const off = Array.from({ length: 61 }, (_, raised) => {
      return Math.abs(slid(threeKeys, raised) - 0.8 * (1 - Math.cos((raised * Math.PI) / 180)));
    });
    expectClose(Math.max(...off), 0.026, 5e-4);
  });

  test('the line of the sum at 45°', () => {
    expectClose(slid(threeKeys, 45), 0.1072 + (15 * 0.2928) / 30, 1e-12);
    expectClose(slid(threeKeys, 45), 0.2536, 5e-5);
  });

  test('beyond its keys the map holds; extended it goes on', () => {
    expectClose([slid(crane, 75), slid(crane, -15)], [0.4, 0], 1e-12);
    const [driver] = crane.drivers!;
    const extended = { ...crane, drivers: [{ ...driver!, map: { ...driver!.map, beyond: 'extend' as const } }] };
    expectClose([slid(extended, 75), slid(extended, -15)], [0.5, -0.1], 1e-12);
  });

  test('a key in radians brings the weight nearly all the way in at one degree', () => {
    expect(slid(radians, 1)).toBeGreaterThan(0.38);
    expectClose(slid(radians, 10), 0.4, 1e-12);
  });

  test('two turns are summed before the map is asked', () => {
    const [driver] = crane.drivers!;
    const jib = { ...crane.bones[2]!, name: 'jib', parent: 'boom' };
    const inputs = ['boom', 'jib'].map((bone) => ({ from: { turn: { bone, axis: 'x' as const } }, times: -1 }));
    const both = { ...crane, bones: [...crane.bones, jib], drivers: [{ ...driver!, inputs }] };
    const pose = {
      bones: { boom: { turn: { angles: [-20, 0, 0] } }, jib: { turn: { angles: [-15, 0, 0] } } },
    } as const;
    expectClose(solved(both, pose).base('weight')[2]! + 0.8, (0.4 * 35) / 60, 1e-12);
  });
});

describe('the transfer item of lesson 5.2', () => {
  const lid = (beyond: 'hold' | 'extend'): Rig => ({
    format: 'counterpose/rig',
    version: 1,
    bones: [
      {
        name: 'lid',
        parent: null,
        role: 'control',
        rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 0.3 },
        switches: [{ name: 'glow', min: 0, max: 1, default: 0, sliding: true }],
      },
      {
        name: 'lamp',
        parent: null,
        role: 'skin',
        rest: { base: [0, 0, 0.1], turn: [0, 0, 0, 1], length: 0.1 },
      },
    ],
    drivers: [
      {
        name: 'light',
        inputs: [{ from: { turn: { bone: 'lid', axis: 'x' } } }],
        map: {
          keys: [
            [20, 0],
            [80, 1],
          ],
          beyond,
        },
        output: { switch: 'lid.glow' },
      },
      {
        name: 'show',
        inputs: [{ from: { switch: 'lid.glow' } }],
        map: {
          keys: [
            [0, 0],
            [1, 1],
          ],
          beyond: 'extend',
        },
        output: { bone: 'lamp', channel: 'move.y' },
      },
    ],
  });
  const at = (open: number, beyond: 'hold' | 'extend' = 'hold') =>
    solved(lid(beyond), { bones: { lid: { turn: { angles: [open, 0, 0] } } } });

  test('half on at 50°, out at 10°, full on at 95°', () => {
    expectClose(
      [50, 10, 95].map((open) => at(open).base('lamp')[1]!),
      [0.5, 0, 1],
      1e-12,
    );
    expect(at(95).flags).toEqual([]);
  });

  test('extended, the switch keeps it in its range, and says so', () => {
    expectClose(
      [10, 95].map((open) => at(open, 'extend').base('lamp')[1]!),
      [0, 1],
      1e-12,
    );
    expect(at(95, 'extend').flags).toEqual(['switch-clamped']);
  });
});
