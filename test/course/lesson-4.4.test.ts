import { describe, expect, test } from 'vitest';
import type { Bone, Link, Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { posedPoints } from './posedPoints.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/4.4-the-guide';
const otter = rigOf(`${folder}/otter-and-tape.json`);
const onAnEye = rigOf(`${folder}/on-an-eye.json`);

const cm = (metres: number[]) => metres.map((x) => 100 * x);
const middleOf = (rig: Rig, pose: Pose) => {
  const { base } = solved(rig, pose);
  return base('eye_left').map((x, i) => (x + base('eye_right')[i]!) / 2);
};
const changed = (rig: Rig, name: string, change: Partial<Bone>): Rig => ({
  ...rig,
  bones: rig.bones.map((bone) => (bone.name === name ? { ...bone, ...change } : bone)),
});
const bone = (name: string, base: readonly [number, number, number], links: readonly Link[] = []): Bone => ({
  name,
  parent: null,
  role: 'guide',
  rest: { base, turn: [0, 0, 0, 1], length: 0.1 },
  links,
});
const place = (source: string, weight: number): Link => ({
  name: `at_${source}`,
  kind: 'follow',
  source,
  channels: ['move'],
  weight,
});
/** Where a bone that starts at `from` begins, after following each place in turn with these weights. */
function meanOf(
  places: (readonly [number, number, number])[],
  weights: number[],
  from: readonly [number, number, number],
) {
  const pivots = places.map((base, i) => bone(`pivot_${i}`, base));
  const links = weights.map((weight, i) => place(`pivot_${i}`, weight));
  const rig: Rig = { format: 'counterpose/rig', version: 1, bones: [...pivots, bone('tape', from, links)] };
  return solved(rig, {}).base('tape');
}

// Check values: the arithmetic on the page, worked by hand; chords with Math.sin. 0.3 in 0.4 is 36.87°, the triangle 3-4-5.
describe('lesson 4.4 says what the solver does', () => {
  test('on the mask it is in the middle in every pose, and its tip on the pearl', () => {
    const poses: Pose[] = [
      {},
      moved('pearl', 0.3),
      moved('pearl_left', 0.15),
      { bones: { mask: { turn: { angles: [30, -40, 20] }, move: [0.1, 0.05, 0], size: [2, 2, 2] } } },
      { bones: { mask: { size: [1, 3, 0.5], turn: { angles: [0, 40, 0] } } } },
    ];
    for (const pose of poses) {
      const { base, axis } = solved(otter, pose);
      expectClose(base('tape'), middleOf(otter, pose), 1e-12);
      const tip = base('tape').map((x, i) => x + 0.4 * axis('tape', 'z')[i]!);
      expectClose(tip, base('pearl'), 1e-12);
    }
  });

  test('a tape from one eye is off by 4.3°', () => {
    expectClose((Math.atan2(3, 40) * 180) / Math.PI, 4.3, 0.02);
  });

  test('on an eye it is in the middle at rest and 1.9 cm beside it at 36.87°', () => {
    expectClose(solved(onAnEye, {}).base('tape'), middleOf(onAnEye, {}), 1e-12);
    const aside = moved('pearl', 0.3);
    expectClose(solved(onAnEye, aside).aside('eye_left'), 36.87, 5e-3);
    const off = cm(solved(onAnEye, aside).base('tape')).map((x, i) => x - cm(middleOf(onAnEye, aside))[i]!);
    expectClose(off, [0.6, 0, 1.8], 1e-9);
    expectClose([Math.hypot(...off), 6 * Math.sin(Math.atan2(3, 4) / 2)], [1.897, 1.897], 5e-4);
  });

  test('its tip is on the pearl all the same', () => {
    const { base, axis } = solved(onAnEye, moved('pearl', 0.3));
    const tip = base('tape').map((x, i) => x + 0.4 * axis('tape', 'z')[i]!);
    expectClose(tip, base('pearl'), 1e-12);
  });

  test('two lamps: 1 and a half make the mean, two halves do not', () => {
    const lamps = [
      [5, 36, 2],
      [-3, 28, -2],
    ] as const;
    expectClose(meanOf([...lamps], [1, 0.5], [0, 0, 0]), [1, 32, 0], 1e-12);
    const halves = meanOf([...lamps], [0.5, 0.5], [1, 32, 0]);
    expectClose(halves, [0, 31, -0.5], 1e-12);
    expectClose(Math.hypot(1, 1, 0.5), 1.5, 1e-12);
    expectClose(Math.hypot(8, 8, 4) / 8, 1.5, 1e-12);
  });

  test('left skin it draws the inner point of a sleeping eye along by 1.9 mm', () => {
    const asleep = ['eye_left', 'eye_right'].reduce((rig, eye) => changed(rig, eye, { links: [] }), otter);
    const inner = [0.018, 0.3, 0];
    const withPoint = (rig: Rig): Rig => ({
      ...rig,
      mesh: { positions: [...inner, ...inner, ...inner], triangles: [0, 1, 2] },
    });
    const goesMm = (rig: Rig) => {
      const went = posedPoints(withPoint(rig), moved('pearl', 0.3)).slice(0, 3);
      return 1000 * Math.hypot(...went.map((x, i) => x - inner[i]!));
    };
    expectClose(goesMm(asleep), 0, 1e-9);
    expectClose(goesMm(changed(asleep, 'tape', { role: 'skin' })), 1.9, 0.1);
    expectClose([1 + 1.5 ** 4, 3.6 * Math.sin(Math.atan2(3, 4) / 2)], [6.06, 1.14], 5e-3);
  });

  test('with the tape taken out nothing else moves', () => {
    const without: Rig = { ...otter, bones: otter.bones.filter(({ name }) => name !== 'tape') };
    const pose = { bones: { mask: { turn: { angles: [10, 20, 30] } }, pearl: { move: [0.2, 0.1, -0.1] } } } as const;
    for (const { name } of without.bones) {
      expect(solved(without, pose).base(name)).toEqual(solved(otter, pose).base(name));
      expect(solved(without, pose).axis(name, 'z')).toEqual(solved(otter, pose).axis(name, 'z'));
    }
  });

  test('three vanes on a raft', () => {
    const vanes = [
      [0.4, 1.9, 0.2],
      [-0.4, 1.5, -0.2],
      [0, 1.1, 0.6],
    ] as const;
    expectClose(meanOf([...vanes], [1, 1 / 2, 1 / 3], [0, 0, 0]), [0, 1.5, 0.2], 1e-12);
    expectClose(meanOf([...vanes], [1 / 3, 1 / 3, 1 / 3], [0, 0, 0]), [-0.03, 0.981, 0.185], 5e-4);
    expectClose(meanOf([...vanes], [1, 1, 1], [0, 0, 0]), [0, 1.1, 0.6], 1e-12);
  });
});
