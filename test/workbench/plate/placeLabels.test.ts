import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Label } from '../../../src/workbench/plate/drawing.ts';
import { placeLabels } from '../../../src/workbench/plate/placeLabels.ts';
import type { View } from '../../../src/workbench/plate/view.ts';

const view: View = {
  right: [1, 0, 0],
  up: [0, 1, 0],
  toward: [0, 0, 1],
  centre: [0, 0, 0],
  scale: 200,
  width: 640,
  height: 400,
};
const width = (text: string) => text.length * 7;
const inView = fc.double({ min: -0.9, max: 0.9, noNaN: true });
const labels = fc.array(
  fc
    .record({ at: fc.tuple(inView, inView, inView), rank: fc.nat(9), n: fc.nat(99) })
    .map(({ at, rank, n }): Label => ({ at, rank, text: `bone_${n}`, tone: 'ink' })),
  { maxLength: 30 },
);

test('no two labels overlap, none leaves the plate, and none covers a handle', () => {
  fc.assert(
    fc.property(labels, fc.array(fc.tuple(fc.nat(640), fc.nat(400)), { maxLength: 4 }), (asked, handles) => {
      const placed = placeLabels(asked, view, width, handles);
      const boxes = placed.map(({ label, x, y }) => ({
        left: x,
        right: x + width(label.text),
        top: y - 11,
        bottom: y + 4,
      }));
      for (const [i, a] of boxes.entries()) {
        expect(a.left >= 0 && a.right <= 640 && a.top >= 0 && a.bottom <= 400).toBe(true);
        for (const b of boxes.slice(i + 1)) {
          expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
        }
        for (const [x, y] of handles) expect(x > a.left && x < a.right && y > a.top && y < a.bottom).toBe(false);
      }
    }),
  );
});

test('of labels at one place the greatest rank is never left out', () => {
  const crowd = Array.from(
    { length: 40 },
    (_, i): Label => ({ at: [0, 0, 0], text: `bone_${i}`, tone: 'ink', rank: i }),
  );
  const placed = placeLabels(crowd, view, width);
  expect(placed.length).toBeLessThan(crowd.length);
  expect(placed[0]?.label.text).toBe('bone_39');
});
