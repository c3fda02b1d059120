import fc from 'fast-check';
import { expect, test } from 'vitest';
import { axesDrawing, tickStep } from '../../../src/workbench/plate/axes.ts';
import { extentOf } from '../../../src/workbench/plate/extent.ts';
import { cross, dot, plus } from '../../../src/workbench/plate/vector.ts';
import { FIRST_LOOK, project, unproject, VIEWS, viewOf } from '../../../src/workbench/plate/view.ts';
import { TWIN_VANES } from '../support/twinVanes.ts';

const extent = extentOf(TWIN_VANES);
const view = (name: (typeof VIEWS)[number]['name'], round = 35, rise = 22) =>
  viewOf({ ...FIRST_LOOK, view: name, round, rise }, extent, 640, 400);

test('each view is right-handed, and shows everything of the rig at rest', () => {
  for (const { name } of VIEWS) {
    const { right, up, toward } = view(name);
    expect(dot(cross(right, up), toward)).toBeCloseTo(1, 12);
    for (const point of extent.points) {
      const [x, y] = project(view(name), point);
      expect(x > 0 && x < 640 && y > 0 && y < 400).toBe(true);
    }
  }
});

test('from the front the character’s left is on the right, from above ahead is up and the left on the left, from the side ahead is right', () => {
  const shift = (name: (typeof VIEWS)[number]['name'], to: [number, number, number]) => {
    const [x0, y0] = project(view(name), [0, 0, 0]);
    const [x, y] = project(view(name), to);
    return [Math.sign(Math.round(x - x0)), Math.sign(Math.round(y - y0))].map((sign) => sign + 0);
  };
  expect(shift('front', [1, 0, 0])).toEqual([1, 0]);
  expect(shift('front', [0, 1, 0])).toEqual([0, -1]);
  expect(shift('above', [0, 0, 1])).toEqual([0, -1]);
  expect(shift('above', [1, 0, 0])).toEqual([-1, 0]);
  expect(shift('side', [0, 0, 1])).toEqual([1, 0]);
});

test('pixels slid across the plate are pixels slid, from wherever it is seen', () => {
  fc.assert(
    fc.property(fc.nat(360), fc.integer({ min: -90, max: 90 }), fc.nat(200), fc.nat(200), (round, rise, dx, dy) => {
      const seen = view('free', round, rise);
      const [x, y] = project(seen, plus([0.3, 1, 0.2], unproject(seen, dx, dy)));
      const [x0, y0] = project(seen, [0.3, 1, 0.2]);
      expect([x - x0, y - y0].map((n) => Number(n.toFixed(6)) + 0)).toEqual([dx, dy]);
    }),
  );
});

test('ticks stand a round length apart and never crowd', () => {
  for (const scale of [0.3, 7, 42, 500, 12345]) {
    const step = tickStep({ scale });
    expect(step * scale).toBeGreaterThanOrEqual(23.9);
    expect([1, 2, 5]).toContain(Number((step / 10 ** Math.floor(Math.log10(step) + 1e-9)).toFixed(6)));
  }
});

test('an axis that points at the reader is left out, with its letter', () => {
  expect(axesDrawing(extent, view('front')).labels.map(({ text }) => text)).toEqual(['x', 'y']);
  expect(axesDrawing(extent, view('free')).labels.map(({ text }) => text)).toEqual(['x', 'y', 'z']);
});
