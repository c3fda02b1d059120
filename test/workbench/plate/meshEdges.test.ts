import { expect, test } from 'vitest';
import { meshEdges } from '../../../src/workbench/plate/meshEdges.ts';
import { isDrawn } from '../../../src/workbench/plate/meshLines.ts';

/** A crate: eight corners, twelve triangles, so twelve folds and six flat diagonals. */
const crate = {
  positions: [0, 1].flatMap((x) => [0, 1].flatMap((y) => [0, 1].flatMap((z) => [x, y, z]))),
  triangles: [
    [0, 1, 3, 0, 3, 2],
    [4, 6, 7, 4, 7, 5],
    [0, 4, 5, 0, 5, 1],
    [2, 3, 7, 2, 7, 6],
    [0, 2, 6, 0, 6, 4],
    [1, 5, 7, 1, 7, 3],
  ].flat(),
};

test('a crate has eighteen edges, twelve of them folds', () => {
  const edges = meshEdges(crate);
  expect(edges).toHaveLength(18);
  expect(edges.filter(({ fold }) => fold)).toHaveLength(12);
  expect(edges.every(({ faces }) => faces.length === 2)).toBe(true);
});

test('corners that stand at one place are one, so that seams are not borders', () => {
  const split = {
    positions: crate.triangles.flatMap((index) => crate.positions.slice(3 * index, 3 * index + 3)),
    triangles: crate.triangles.map((_, i) => i),
  };
  expect(meshEdges(split)).toHaveLength(18);
});

test('drawn are folds toward the reader and the outline, not what is turned away', () => {
  const toward = [1, 1, -1];
  expect(isDrawn({ a: 0, b: 1, faces: [0, 1], fold: true }, toward)).toBe(true);
  expect(isDrawn({ a: 0, b: 1, faces: [0, 1], fold: false }, toward)).toBe(false);
  expect(isDrawn({ a: 0, b: 1, faces: [0, 2], fold: false }, toward)).toBe(true);
  expect(isDrawn({ a: 0, b: 1, faces: [2], fold: true }, toward)).toBe(false);
});
