/**
 * Makes the meshes of the Twin Vanes for the exercises: posts, and on each a blade along its bone with a
 * nose at the pivot on the side that is to point. Run from the project's folder: node scripts/vane-meshes.mjs
 */
import { writeFileSync } from 'node:fs';
import { across, joinRings, plus, times } from './loft.mjs';

const HALF_ROOT_M = 0.012;
const HALF_WIDE_M = 0.035;
const NOSE_M = 0.06;
const POST_TOP_M = 1.35;

const FORWARD = [0, 0, 1];
const BACK = [0, 0, -1];
const UP = [0, 1, 0];
const HIGH = [0, 0.6, 0.8];

const left = (along, nose) => ({ x: 0.4, along, nose });
const right = (along, nose) => ({ x: -0.4, along, nose });

const one = {
  arrow: [left(FORWARD, FORWARD)],
  tail: [left(BACK, FORWARD)],
  board: [left([1, 0, 0], FORWARD)],
  banner: [left(UP, FORWARD)],
  high: [left(HIGH, HIGH)],
};
const two = {
  arrows: [left(FORWARD, FORWARD), right(FORWARD, FORWARD)],
  wide: [left([0.6, 0, 0.8], [0.6, 0, 0.8]), right([-0.6, 0, 0.8], [-0.6, 0, 0.8])],
  boards: [left([1, 0, 0], FORWARD), right([-1, 0, 0], FORWARD)],
  high: [left(HIGH, HIGH), right(HIGH, HIGH)],
};

for (const name of ['arrow', 'tail', 'board', 'banner', 'high']) write('one-vane', name, one[name]);
for (const name of ['arrows', 'wide', 'boards', 'high']) write('two-vanes-one-holder', name, two[name]);
for (const name of ['arrows', 'boards', 'high']) write('let-go', name, two[name]);

function write(exercise, name, vanes) {
  const mesh = { positions: [], triangles: [] };
  for (const vane of vanes) {
    addPost(mesh, vane.x);
    addBlade(mesh, vane);
    addNose(mesh, vane);
  }
  writeFileSync(`content/exercises/${exercise}/mesh-${name}.json`, `${JSON.stringify(mesh)}\n`);
}

function addPost(mesh, x) {
  const rings = [0, POST_TOP_M].map((y) => square([x, y, 0], FORWARD, [1, 0, 0], 0.02));
  addLoft(mesh, rings);
}

/** A closed blade from the pivot along the bone: narrow at the root, widest at three quarters, a point at the tip. */
function addBlade(mesh, { x, along }) {
  const [side, over] = across(along);
  const at = (metres) => plus([x, 1.5, 0], times(along, metres));
  addLoft(mesh, [
    square(at(0), side, over, HALF_ROOT_M),
    square(at(0.22), side, over, HALF_WIDE_M),
    square(at(0.3), side, over, HALF_ROOT_M / 4),
  ]);
}

function addNose(mesh, { x, nose }) {
  const [side, over] = across(nose);
  const base = [x, 1.5, 0];
  addLoft(mesh, [square(base, side, over, 0.02), square(plus(base, times(nose, NOSE_M)), side, over, 0.004)]);
}

function square(centre, side, over, half) {
  const corners = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ];
  return corners.map(([a, b]) => plus(centre, plus(times(side, a * half), times(over, b * half))));
}

/** Joins rings of four corners into a closed skin. */
function addLoft(mesh, rings) {
  const corner = joinRings(mesh, rings);
  for (const [ring, order] of [
    [0, [0, 2, 1, 0, 3, 2]],
    [rings.length - 1, [0, 1, 2, 0, 2, 3]],
  ]) {
    mesh.triangles.push(...order.map((k) => corner(ring, k)));
  }
}
