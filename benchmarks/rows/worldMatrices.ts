/** World matrices of a tree of bones, all of whose moves, turns and sizes have changed. */
import { mat4, quat, vec3 } from 'gl-matrix';
import { Object3D } from 'three';
import { type Bone, createState, evaluate, type Rig } from '../../src/solver/index.ts';
import { between, seeded, unitQuaternion, whole } from '../../test/support/random.ts';
import type { Contest } from '../contest.ts';
import { type FlatTree, flatWorlds } from '../peers/flatWorlds.ts';
import { programOf } from '../rigs/programOf.ts';

const ASKS: Record<number, number> = { 50: 5, 1000: 6, 10000: 12 };
/** Two poses that take turns, so that nothing stays as it was. */
const POSES = 2;

export function worldMatrices(count: number): Contest {
  const rig = tree(count);
  const poses = Array.from({ length: POSES }, (_, i) => packedPose(count, i));
  let turn = 0;
  const next = () => poses[turn++ % POSES];
  const [three, gl, flat, ours] = [withThree(rig), withGlMatrix(rig), withLoop(rig), withOurs(rig)];
  return {
    work: `world matrices, ${count} bones`,
    unit: 'ns a bone',
    perCall: count,
    contenders: {
      ours: () => ours(next()),
      three: () => three(next()),
      'gl-matrix': () => gl(next()),
      'flat loop': () => flat(next()),
    },
    asks: [
      { peer: 'three', atLeast: ASKS[count] },
      { peer: 'flat loop', atLeast: 1 / 1.15 },
    ],
  };
}

function tree(count: number): Rig {
  const random = seeded(count);
  const bones = Array.from({ length: count }, (_, i): Bone => {
    const parent = i === 0 ? null : `bone_${Math.max(0, i - whole(random, 1, 3))}`;
    const base = [between(random, -1, 1), between(random, 0, 2), between(random, -1, 1)] as const;
    return { name: `bone_${i}`, parent, role: 'skin', rest: { base, turn: [0, 0, 0, 1], length: 0.1 } };
  });
  return { format: 'counterpose/rig', version: 1, bones };
}

function packedPose(count: number, seed: number): Float64Array {
  const random = seeded(seed);
  const about = (middle: number) => Array.from({ length: 3 }, () => middle + between(random, -0.05, 0.05));
  const bones = Array.from({ length: count }, () => [...about(0), ...unitQuaternion(random), ...about(1)]);
  return Float64Array.from(bones.flat());
}

function withOurs(rig: Rig): (pose: Float64Array) => void {
  const program = programOf(rig);
  const state = createState(program);
  return (pose) => evaluate(program, state, pose);
}

function withThree({ bones }: Rig): (pose: Float64Array) => void {
  const scene = new Object3D();
  const objects = bones.map(() => new Object3D());
  const { parents, bases } = flatTree(bones);
  objects.forEach((object, i) => {
    (parents[i] < 0 ? scene : objects[parents[i]]).add(object);
  });
  return (pose) => {
    for (let i = 0; i < objects.length; i++) {
      const { position, quaternion, scale } = objects[i];
      const at = 10 * i;
      position.set(bases[3 * i] + pose[at], bases[3 * i + 1] + pose[at + 1], bases[3 * i + 2] + pose[at + 2]);
      quaternion.set(pose[at + 3], pose[at + 4], pose[at + 5], pose[at + 6]);
      scale.set(pose[at + 7], pose[at + 8], pose[at + 9]);
    }
    scene.updateMatrixWorld(true);
  };
}

function withGlMatrix({ bones }: Rig): (pose: Float64Array) => void {
  const { parents, bases } = flatTree(bones);
  const nodes = bones.map(() => ({
    move: vec3.create(),
    turn: quat.create(),
    size: vec3.create(),
    local: mat4.create(),
    world: mat4.create(),
  }));
  return (pose) => {
    for (let i = 0; i < nodes.length; i++) {
      const { move, turn, size, local, world } = nodes[i];
      const at = 10 * i;
      vec3.set(move, bases[3 * i] + pose[at], bases[3 * i + 1] + pose[at + 1], bases[3 * i + 2] + pose[at + 2]);
      quat.set(turn, pose[at + 3], pose[at + 4], pose[at + 5], pose[at + 6]);
      vec3.set(size, pose[at + 7], pose[at + 8], pose[at + 9]);
      mat4.fromRotationTranslationScale(local, turn, move, size);
      if (parents[i] < 0) mat4.copy(world, local);
      else mat4.multiply(world, nodes[parents[i]].world, local);
    }
  };
}

function withLoop({ bones }: Rig): (pose: Float64Array) => void {
  const flat = flatTree(bones);
  return (pose) => flatWorlds(flat, pose);
}

/** Parents come first in these trees, and no bone is turned at rest. */
function flatTree(bones: readonly Bone[]): FlatTree {
  const number = new Map(bones.map(({ name }, i) => [name, i]));
  const parents = Int32Array.from(bones, ({ parent }) => (parent === null ? -1 : number.get(parent)!));
  const bases = bones.flatMap(({ rest }, i) => {
    const above = parents[i] < 0 ? [0, 0, 0] : bones[parents[i]].rest.base;
    return rest.base.map((x, axis) => x - above[axis]);
  });
  return { parents, bases: Float64Array.from(bases), worlds: new Float64Array(12 * bones.length) };
}
