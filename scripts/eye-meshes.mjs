/**
 * Makes the eyeballs for the exercises: a ball about its middle, and a stub on it where the pupil is, for a plain ball
 * hides its turning. A lamp or a head has a second stub for its crest, which shows the roll. Run from the project's folder: node scripts/eye-meshes.mjs
 */
import { writeFileSync } from 'node:fs';
import { across, joinRings, plus, times } from './loft.mjs';

const SEGMENTS = 8;
const RINGS = 6;

const FORWARD = [0, 0, 1];
const OUTWARD = [0.6, 0, 0.8];
const HIGH = [0, 0.6, 0.8];

const carved = (gaze) => [{ middle: [0.15, 1.5, 0], radius: 0.06, gaze }];
const pair = (x, gaze, radius) => [
  { middle: [x, 0.3, 0], radius, gaze },
  { middle: [-x, 0.3, 0], radius, gaze: [-gaze[0], gaze[1], gaze[2]] },
];

const crested = (middle, gaze, crest) => [{ middle, radius: 0.08, gaze, crest }];

/** Two balls that look ahead and a skull behind them, laid as the head is: turned about y, or tilted about the neck, by 3 to 4. */
const faced = (x, lay) => [
  { middle: lay([x, 0.3, 0]), radius: 0.02, gaze: lay(FORWARD, true) },
  { middle: lay([-x, 0.3, 0]), radius: 0.02, gaze: lay(FORWARD, true) },
  { middle: lay([0, 0.3, -0.12]), radius: 0.06, gaze: lay([0, 1, 0], true) },
];
const straight = (at) => at;
const yawed = ([x, y, z]) => [0.8 * x + 0.6 * z, y, 0.8 * z - 0.6 * x];
const rolled = ([x, y, z], isWay = false) => {
  const up = isWay ? y : y - 0.2;
  return [0.8 * x - 0.6 * up, (isWay ? 0 : 0.2) + 0.6 * x + 0.8 * up, z];
};
const faces = {
  otter: faced(0.03, straight),
  toad: faced(0.07, straight),
  'otter-turned': faced(0.03, yawed),
  'toad-tilted': faced(0.07, rolled),
};

const meshes = {
  flinch: { ahead: carved(FORWARD), outward: carved(OUTWARD), high: carved(HIGH) },
  'ball-in-its-socket': { ahead: carved(FORWARD), outward: carved(OUTWARD), high: carved(HIGH) },
  'lamp-upright': {
    ahead: crested([0.4, 1.5, 0], FORWARD, [0, 1, 0]),
    high: crested([0.4, 1.5, 0], HIGH, [0, 0.8, -0.6]),
  },
  'off-the-middle': { otter: pair(0.03, FORWARD, 0.012), toad: pair(0.06, FORWARD, 0.015) },
  'meet-at-the-holder': {
    otter: pair(0.03, FORWARD, 0.012),
    toad: pair(0.06, OUTWARD, 0.015),
    high: pair(0.03, HIGH, 0.012),
  },
  'gaze-rig': faces,
  'eyes-on-their-targets': faces,
  'parallel-and-converge': faces,
  'together-and-apart': faces,
  'the-line-between': faces,
  'one-eye-holds-on': faces,
  'both-to-one-side': faces,
  'over-the-top': { head: crested([0, 1.5, 0], HIGH, [0, 0.8, -0.6]) },
};

for (const [exercise, all] of Object.entries(meshes)) {
  for (const [name, balls] of Object.entries(all)) {
    const mesh = { positions: [], triangles: [] };
    for (const ball of balls) {
      addLoft(mesh, ballRings(ball));
      addLoft(mesh, stubRings(ball, ball.gaze));
      if (ball.crest) addLoft(mesh, stubRings(ball, ball.crest));
    }
    writeFileSync(`content/exercises/${exercise}/mesh-${name}.json`, `${JSON.stringify(mesh)}\n`);
  }
}

/** From the back of the ball to its front; the first and last ring are small enough to look like a point. */
function ballRings({ middle, radius, gaze }) {
  return Array.from({ length: RINGS + 1 }, (_, i) => {
    const angle = Math.PI * (0.02 + (0.96 * i) / RINGS);
    return ring(middle, gaze, -radius * Math.cos(angle), radius * Math.sin(angle));
  });
}

function stubRings({ middle, radius }, along) {
  return [ring(middle, along, 0.9 * radius, 0.3 * radius), ring(middle, along, 1.2 * radius, 0.2 * radius)];
}

function ring(middle, along, distance, radius) {
  const [side, over] = across(along);
  return Array.from({ length: SEGMENTS }, (_, k) => {
    const angle = (2 * Math.PI * k) / SEGMENTS;
    const out = plus(times(side, radius * Math.cos(angle)), times(over, radius * Math.sin(angle)));
    return plus(middle, plus(times(along, distance), out));
  });
}

/** Joins rings into a closed skin. */
function addLoft(mesh, rings) {
  const corner = joinRings(mesh, rings);
  const last = rings.length - 1;
  for (let k = 1; k + 1 < SEGMENTS; k++) {
    mesh.triangles.push(corner(0, 0), corner(0, k + 1), corner(0, k));
    mesh.triangles.push(corner(last, 0), corner(last, k), corner(last, k + 1));
  }
}
