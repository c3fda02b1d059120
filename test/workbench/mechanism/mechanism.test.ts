import { expect, test } from 'vitest';
import type { Part } from '../../../src/grader/index.ts';
import type { Driver } from '../../../src/solver/index.ts';
import { addBone } from '../../../src/workbench/edit/addBone.ts';
import { copySide } from '../../../src/workbench/edit/copySide.ts';
import { boneOf } from '../../../src/workbench/edit/draft.ts';
import { driverAcross } from '../../../src/workbench/edit/driverAcross.ts';
import { linkAcross } from '../../../src/workbench/edit/linkAcross.ts';
import { boundTo, groupsOf } from '../../../src/workbench/mechanism/groups.ts';
import { keyAt, plotOf } from '../../../src/workbench/mechanism/mapCurve.ts';
import { tried } from '../../../src/workbench/state/tried.ts';
import { DRAFT, TWIN_VANES } from '../support/twinVanes.ts';

const REST = { base: [0, 1, 0], turn: [0, 0, 0, 1], length: 0.2 } as const;
const target: Part = { id: 'target', is: 'bone', name: 'kite', given: false, says: 'the left target' };
const kite = addBone(REST, { name: 'kite' }).apply({ rig: TWIN_VANES, parts: {} });
const made = addBone(REST, { name: 'pointer' }).apply(kite);

test('bones are gathered by what they serve', () => {
  const groups = groupsOf(made, { parts: [target], start: TWIN_VANES });
  expect(groups.map(({ title, bones }) => [title, bones.length])).toEqual([
    ['What the task asks for', 1],
    ['Made besides', 1],
    ['Given', 6],
  ]);
  expect(groups[0]!.bones[0]).toMatchObject({ bone: { name: 'kite' }, serves: ['the left target'] });
});

test('a part is bound by the name the task gives until another is chosen, and not to what is not there', () => {
  expect(boundTo(made, target)).toBe('kite');
  expect(boundTo({ ...made, parts: { target: 'pointer' } }, target)).toBe('pointer');
  expect(boundTo({ ...made, parts: { target: 'gull' } }, target)).toBe('');
});

test('a link copied to the other side takes the place of one of its name there', () => {
  const draft = linkAcross('vane_left', 'hold').apply(DRAFT);
  expect(boneOf(draft, 'vane_right')?.links?.at(-1)).toEqual({ name: 'hold', kind: 'limit', yaw: [-80, 80] });
  const twice = linkAcross('vane_left', 'hold').apply(draft);
  expect(twice).toEqual(draft);
  expect(tried(DRAFT, linkAcross('vane_left', 'watch'))).toMatchObject({
    ok: false,
    refusal: { place: expect.stringContaining('/target/bone') },
  });
});

test('a driver copied to the other side becomes two, named for their sides', () => {
  const aimed = {
    ...DRAFT,
    rig: {
      ...TWIN_VANES,
      bones: TWIN_VANES.bones.map((bone) =>
        bone.name === 'vane_right'
          ? { ...bone, links: [{ name: 'watch', kind: 'aim', target: { bone: 'wind' } } as const] }
          : bone,
      ),
      drivers: [{ ...TWIN_VANES.drivers![0]!, inputs: [{ from: { switch: 'wind.together' } }] } as Driver],
    },
  };
  const both = tried(aimed, driverAcross('let_go'));
  expect(both.ok && both.value.rig.drivers?.map(({ name, output }) => [name, output])).toEqual([
    ['let_go_left', { bone: 'vane_left', link: 'watch', field: 'weight' }],
    ['let_go_right', { bone: 'vane_right', link: 'watch', field: 'weight' }],
  ]);
});

test('a side that cannot be copied is refused, and says why', () => {
  const free = { ...DRAFT, rig: { ...TWIN_VANES, drivers: [] } };
  expect(tried(free, copySide('left')).ok).toBe(true);
  // The driver let_go would be left without the link it writes to.
  expect(tried(DRAFT, copySide('right'))).toMatchObject({ ok: false, refusal: { expected: 'a link on "vane_left"' } });
});

test('a map’s picture goes through its keys, and a dragged key stays between its neighbours', () => {
  const map = {
    keys: [
      [0, 1],
      [0.5, 0.2],
      [1, 0],
    ] as const,
  };
  const plot = plotOf(map);
  expect(plot.keys).toHaveLength(3);
  const [x, y] = plot.keys[1]!;
  expect(keyAt(plot, map, 1, x, y)).toEqual([0.5, 0.2]);
  const [far] = keyAt(plot, map, 1, plot.frame.width, y);
  expect(far).toBeLessThan(1);
  const [near] = keyAt(plot, map, 1, 0, y);
  expect(near).toBeGreaterThan(0);
});

test('a flat map still has a picture', () => {
  const plot = plotOf({
    keys: [
      [0, 1],
      [1, 1],
    ],
  });
  expect(plot.curve).not.toContain('NaN');
  expect(plot.labels).toHaveLength(3);
});

test('every label of a map has its room, however long, and the two beneath do not meet', () => {
  const KEYS = [
    [
      [-180, -0.125],
      [180, 1234.5678],
    ],
    [
      [-0.123456, 1],
      [0.654321, -1e-7],
    ],
    [
      [0, 0],
      [1, 1],
    ],
  ] as const;
  for (const keys of KEYS) {
    const { labels, frame } = plotOf({ keys });
    const ends = labels.map(({ text, x, anchor }) => {
      const width = text.length * 6.5;
      const from = anchor === 'end' ? x - width : x - width / 2;
      return { from, to: from + width };
    });
    for (const { from, to } of ends) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(frame.width);
    }
    expect(ends[1]!.from).toBeGreaterThan(ends[0]!.to);
  }
  expect(plotOf({ keys: KEYS[0] }).labels.map(({ text }) => text)).toEqual(['−180', '180', '−0.125', '1235']);
});
