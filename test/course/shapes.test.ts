import { describe, expect, test } from 'vitest';
import { arc, arrowHead, beside, notchedRing, paddle, ring, segment, tape } from '../../src/course/figure/shapes.ts';
import { expectClose } from '../support/close.ts';

const numbers = (path: string) => path.match(/-?\d+(\.\d+)?/g)!.map(Number);

describe('paddle', () => {
  // Two circles of radii 5 and 2 whose centres lie 10 apart have outer tangents whose points of contact lie, seen
  // from each centre, at ± acos((5 − 2) / 10) from the way between the centres: similar right triangles.
  test('touches both circles where the common tangents do', () => {
    const touch = Math.acos(3 / 10);
    const path = paddle([0, 0], [10, 0], 5, 2);
    const [x0, y0] = numbers(path.match(/^M([^A]*)A/)![1]!);
    expectClose([x0!, -y0!], [5 * Math.cos(touch), 5 * Math.sin(touch)], 0.006, 'at the base');
    const [x1, y1] = numbers(path.match(/L([^A]*)A/)![1]!);
    expectClose([x1!, -y1!], [10 + 2 * Math.cos(touch), -2 * Math.sin(touch)], 0.006, 'at the tip');
  });

  test('seen end on is the larger circle', () => {
    expect(paddle([3, 4], [3, 4], 5, 2)).toBe(ring([3, 4], 5));
  });
});

test('y runs upwards', () => {
  expect(segment([0, 0], [3, 4])).toBe('M0 0L3 -4');
});

test('ring is a circle about its centre', () => {
  expect(ring([1, 2], 5)).toBe('M-4 -2A5 5 0 1 0 6 -2A5 5 0 1 0 -4 -2Z');
});

test('a control’s notch points where it is turned', () => {
  const path = notchedRing([0, 0], 10, Math.PI / 2);
  expect(path.slice(path.lastIndexOf('M'))).toBe('M0 -6L0 -13');
});

test('a tape of 1 m with a tick at each 0.25 m has three ticks', () => {
  expect(tape([0, 0], [100, 0], 10, 25).match(/M/g)).toHaveLength(1 + 3);
});

test('beside lies to the left of the way', () => {
  expectClose(beside([0, 0], [10, 0], 0.5, 3), [5, 3], 1e-12);
  expectClose(beside([0, 0], [0, 10], 0.5, 3), [-3, 5], 1e-12);
});

test('arc runs counter-clockwise to a greater angle, clockwise to a smaller', () => {
  expect(arc([0, 0], 10, 0, Math.PI / 2)).toBe('M10 0A10 10 0 0 0 0 -10');
  expect(arc([0, 0], 10, 0, -Math.PI / 2)).toBe('M10 0A10 10 0 0 1 0 10');
  expect(arc([0, 0], 10, 0, 1.5 * Math.PI)).toContain('0 1 0');
});

test('an arrow head ends in the tip', () => {
  expect(arrowHead([0, 0], [10, 0], 5)).toContain('L10 0L');
});
