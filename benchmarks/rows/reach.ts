/** Two bones reaching: 100 cranes whose hooks jump between two places, against an iterative solver of our own writing. */
import { Object3D, Vector3 } from 'three';
import type { Rig } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';
import { descend, type Limb } from '../peers/ccd.ts';
import { flatReach } from '../peers/flatReach.ts';
import { BOOM, boomWorld, cranes, hookOf, hookWorld, JIB, jibWorld, LEAN, STAND } from '../rigs/cranes.ts';
import { linkAlone } from '../rigs/linkAlone.ts';

const COUNT = 100;
/** What the iterative solver is let off with, metres, and how often it may try. */
const WITHIN = 5e-6;
const MOST_ROUNDS = 200;

export function reach(): Contest {
  const rig = cranes(COUNT);
  const ours = withOurs(rig);
  const ccd = withCcd(rig);
  return {
    work: 'two-bone reach, 100 limbs',
    unit: 'ns a solve',
    perCall: COUNT,
    contenders: { ours: ours.run, 'three CCD': ccd.run, 'flat loop': withLoop(rig) },
    asks: [{ peer: 'three CCD', atLeast: 50 }],
    notes: [
      `ours ${ours.worst().toExponential(1)} m off at most`,
      `CCD within ${WITHIN} m after ${ccd.rounds().toFixed(1)} rounds on average`,
    ],
  };
}

const basesOf = ({ bones }: Rig): (readonly number[])[] =>
  bones.filter(({ name }) => name.startsWith('boom')).map(({ rest }) => rest.base);

function moveHooks(worlds: Float64Array, bases: readonly (readonly number[])[], turn: number): void {
  for (let i = 0; i < bases.length; i++) worlds.set(hookOf(bases[i], turn), hookWorld(i) + 9);
}

function withOurs(rig: Rig): { run: () => void; worst: () => number } {
  const { state, run } = linkAlone(rig);
  const { world } = state;
  const bases = basesOf(rig);
  let turn = 0;
  const next = () => {
    moveHooks(world, bases, turn++);
    run();
  };
  const off = (i: number) =>
    Math.hypot(
      ...[0, 1, 2].map(
        (k) => world[jibWorld(i) + 9 + k] + JIB * world[jibWorld(i) + 6 + k] - world[hookWorld(i) + 9 + k],
      ),
    );
  const worst = () => {
    next();
    return Math.max(...bases.map((_, i) => off(i)));
  };
  return { run: next, worst };
}

function withCcd(rig: Rig): { run: () => void; rounds: () => number } {
  const bases = basesOf(rig);
  const limbs = bases.map(limbAt);
  const target = new Vector3();
  let [turn, solves, rounds] = [0, 0, 0];
  const run = () => {
    limbs.forEach((limb, i) => {
      pose(limb);
      target.fromArray(hookOf(bases[i], turn));
      rounds += descend(limb, target, WITHIN, MOST_ROUNDS);
    });
    solves += limbs.length;
    turn++;
  };
  run();
  return { run, rounds: () => rounds / solves };
}

function limbAt(base: readonly number[]): Limb {
  const scene = new Object3D();
  const [upper, lower, tip] = [new Object3D(), new Object3D(), new Object3D()];
  scene.add(upper.add(lower.add(tip)));
  upper.position.fromArray([...base]);
  lower.position.z = BOOM;
  tip.position.z = JIB;
  return { upper, lower, tip };
}

/** Every solve starts from the rest pose, as every evaluation does. */
function pose({ upper, lower }: Limb): void {
  upper.quaternion.set(-LEAN, 0, 0, STAND);
  lower.quaternion.set(2 * LEAN * STAND, 0, 0, 1 - 2 * LEAN * LEAN);
  upper.updateMatrixWorld(true);
}

function withLoop(rig: Rig): () => void {
  const worlds = linkAlone(rig).state.world.slice();
  const bases = basesOf(rig);
  let turn = 0;
  return () => {
    moveHooks(worlds, bases, turn++);
    for (let i = 0; i < bases.length; i++) flatReach(worlds, boomWorld(i), jibWorld(i), hookWorld(i), BOOM, JIB);
  };
}
