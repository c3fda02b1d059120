import { describe, expect, test } from 'vitest';
import { type PlateInput, printed, unitOf } from '../../src/course/moving/plate.ts';
import { poseAt } from '../../src/course/moving/pose.ts';
import { stage } from '../../src/course/moving/stage.ts';
import { project, VIEWS, type ViewName } from '../../src/course/moving/view.ts';
import type { Rig, Vec3 } from '../../src/solver/document/rig.ts';

describe('views', () => {
  const cross = ([a, b, c]: Vec3, [d, e, f]: Vec3): Vec3 => [b * f - c * e, c * d - a * f, a * e - b * d];

  // A right-handed picture: what points right, crossed with what points up, points at the reader. A left-handed
  // one would show the rig in a mirror.
  test.each(Object.keys(VIEWS) as ViewName[])('%s no plate shows the rig in a mirror', (view) => {
    const { right, up, toward } = VIEWS[view];
    expect(cross(right, up).map((value) => value + 0)).toEqual([...toward]);
  });

  test('from the front the character’s left is on the right; from above and from the side forward is shown', () => {
    const leftUpForward: Vec3 = [1, 2, 3];
    expect(project(leftUpForward, 'from the front', 10)).toEqual({ point: [10, 20], depth: 3 });
    expect(project(leftUpForward, 'from above', 10)).toEqual({ point: [-10, 30], depth: 2 });
    expect(project(leftUpForward, 'from the side', 10)).toEqual({ point: [30, 20], depth: -1 });
  });
});

const range = { says: 'Turn', min: -90, max: 90, step: 1 };
const inputs: PlateInput[] = [
  { ...range, bone: 'boom', channel: 'turn.x' },
  { ...range, bone: 'boom', channel: 'turn.z' },
  { ...range, bone: 'hook', channel: 'move.y' },
  { ...range, switch: 'holder.together' },
];

test('poseAt puts each input in its channel and leaves the rest at rest', () => {
  expect(poseAt(inputs, [-30, 5, 0.25, 1])).toEqual({
    bones: { boom: { turn: { angles: [-30, 0, 5] } }, hook: { move: [0, 0.25, 0] } },
    switches: { 'holder.together': 1 },
  });
});

test('inputs are printed with their unit, a true minus and no more places than their step', () => {
  expect(inputs.map(unitOf)).toEqual(['°', '°', ' m', '']);
  expect(unitOf({ ...range, bone: 'boom', channel: 'size.z' as never }), 'a size is a factor').toBe('');
  expect(printed(-30, 1)).toBe('−30');
  expect(printed(0.25, 0.01)).toBe('0.25');
  expect(printed(-0.0001, 0.01)).toBe('0.00');
});

describe('stage', () => {
  const rig: Rig = {
    format: 'counterpose/rig',
    version: 1,
    bones: [
      { name: 'far', parent: null, role: 'guide', rest: { base: [1, 0, 0], turn: [0, 0, 0, 1], length: 1 } },
      { name: 'near', parent: null, role: 'skin', rest: { base: [-1, 0, 0], turn: [0, 0, 0, 1], length: 2 } },
    ],
  };
  const data = {
    rig,
    view: 'from the side' as const,
    scale: 10,
    width: 4,
    inputs: [{ ...range, bone: 'near', channel: 'turn.x' as const }],
    readings: [{ says: 'height', bone: 'near', at: 1, along: 'y' as const }],
    sight: { near: 5 },
  };

  test('draws the furthest bone first, in its pose, with what is read off', () => {
    const { bones, readings } = stage(data)([-90]);
    expect(bones.map(({ name }) => name)).toEqual(['far', 'near']);
    // A quarter turn about +x takes +z to -y; a negative one takes it up: 2 m, and the sight on to 5 m.
    expect(bones[1]).toMatchObject({ spine: 'M0 0L0 -20', sight: 'M0 -20L0 -50' });
    expect(readings).toEqual(['2.000 m']);
  });

  test('gives a guide no spine and no base', () => {
    expect(stage(data)([0]).bones[0]).toMatchObject({ spine: '', base: '', sight: '' });
  });

  test('refuses a reading of no bone and a rig with a cycle', () => {
    expect(() => stage({ ...data, readings: [{ ...data.readings[0]!, bone: 'nobody' }] })([0])).toThrow(/nobody/);
    const follow = (name: string, source: string) => ({ name, kind: 'follow' as const, source });
    const cyclic = {
      ...rig,
      bones: [
        { ...rig.bones[0]!, links: [follow('a', 'near')] },
        { ...rig.bones[1]!, links: [follow('b', 'far')] },
      ],
    };
    expect(() => stage({ ...data, rig: cyclic })).toThrow(/cycle: far/);
  });
});
