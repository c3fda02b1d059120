import { glMatrix, mat4 } from 'gl-matrix';
import { Object3D, Quaternion, Vector3 } from 'three';
import { expect, test } from 'vitest';
import type { Bone, BonePose, Quat, Vec3 } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { between, type Random, seeded, shuffled, unitQuaternion, whole } from '../support/random.ts';
import { bone, stand } from './stage.ts';

/** Trees of bones with sizes that no axes share, so that shear runs down them, against two libraries' matrices. */

glMatrix.setMatrixArrayType(Array as unknown as Float32ArrayConstructor);

interface Tree {
  bones: Bone[];
  pose: Record<string, Required<BonePose> & { turn: Quat }>;
}

const vector = (random: Random, low: number, high: number): Vec3 => [
  between(random, low, high),
  between(random, low, high),
  between(random, low, high),
];

function randomTree(random: Random): Tree {
  const names = Array.from({ length: whole(random, 2, 14) }, (_, i) => `reed_${i}`);
  const bones = names.map((name, i) => {
    const parent = i > 0 && random() < 0.9 ? names[whole(random, Math.max(0, i - 3), i - 1)] : undefined;
    return bone(name, { base: vector(random, -1, 1), turn: unitQuaternion(random), ...(parent && { parent }) });
  });
  const pose = Object.fromEntries(
    names.map((name) => [
      name,
      { move: vector(random, -0.5, 0.5), turn: unitQuaternion(random), size: vector(random, 0.7, 1.4) },
    ]),
  );
  return { bones, pose };
}

interface Local {
  translation: Vector3;
  turn: Quaternion;
  size: Vec3;
}

/** Each bone's transform in its parent's frame: (t + Q·move), Q·turn, size, by three's vectors and quaternions. */
function localOf({ bones, pose }: Tree, { name, parent, rest }: Bone): Local {
  const above = parent === null ? null : bones.find((other) => other.name === parent)!.rest;
  const undo = new Quaternion(...(above?.turn ?? [0, 0, 0, 1])).invert();
  const from = new Vector3(...(above?.base ?? [0, 0, 0]));
  const turn = undo.clone().multiply(new Quaternion(...rest.turn));
  const base = new Vector3(...rest.base).sub(from).applyQuaternion(undo);
  const own = pose[name];
  return {
    translation: base.add(new Vector3(...own.move).applyQuaternion(turn)),
    turn: turn.clone().multiply(new Quaternion(...own.turn)),
    size: own.size,
  };
}

function threeWorlds(tree: Tree): Record<string, number[]> {
  const objects = new Map(tree.bones.map(({ name }) => [name, new Object3D()]));
  for (const each of tree.bones) {
    const object = objects.get(each.name)!;
    const { translation, turn, size } = localOf(tree, each);
    object.position.copy(translation);
    object.quaternion.copy(turn);
    object.scale.set(...size);
    if (each.parent !== null) objects.get(each.parent)!.add(object);
  }
  for (const object of objects.values()) object.updateWorldMatrix(true, false);
  return Object.fromEntries([...objects].map(([name, object]) => [name, object.matrixWorld.toArray()]));
}

function glWorlds(tree: Tree): Record<string, number[]> {
  const worlds: Record<string, mat4> = {};
  for (const each of tree.bones) {
    const { translation, turn, size } = localOf(tree, each);
    const local = mat4.fromRotationTranslationScale(mat4.create(), turn.toArray(), translation.toArray(), [...size]);
    worlds[each.name] = each.parent === null ? local : mat4.multiply(mat4.create(), worlds[each.parent], local);
  }
  return Object.fromEntries(Object.entries(worlds).map(([name, world]) => [name, Array.from(world)]));
}

function worstOver(count: number, worldsOf: (tree: Tree) => Record<string, number[]>): number {
  const random = seeded(1000);
  let worst = 0;
  for (let i = 0; i < count; i++) {
    const tree = randomTree(random);
    const theirs = worldsOf(tree);
    const ours = stand(shuffled(random, tree.bones), tree.pose);
    for (const [name, matrix] of Object.entries(theirs)) {
      expectClose(ours[name].matrix, matrix, 1e-12, `tree ${i}, ${name}`);
      worst = Math.max(worst, ...matrix.map((value, k) => Math.abs(value - ours[name].matrix[k])));
    }
  }
  return worst;
}

test.each([
  ['three 0.187, Object3D', threeWorlds],
  ['gl-matrix 3.4, mat4', glWorlds],
])('1,000 seeded trees against %s, to 1e-12 in every element', (library, worldsOf) => {
  const worst = worstOver(1000, worldsOf);
  console.log(`${library}: worst element of 1,000 trees off by ${worst.toExponential(2)}`);
  expect(worst).toBeGreaterThan(0);
});
