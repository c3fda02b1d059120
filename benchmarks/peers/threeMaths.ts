/**
 * The rig of rigs/otter.ts with three's vectors, quaternions and matrices alone: bones in the order they depend on each
 * other, worked out once, each with its links done before the next is looked at.
 */
import { Matrix4, Quaternion, Vector3 } from 'three';
import type { Rig } from '../../src/solver/index.ts';
import { OTTER_LINKS, type Otter, type OtterLink } from './otterLinks.ts';
import { type Rests, restsOf } from './rests.ts';

/** Read by others' links, so they come first. */
const FIRST = ['root', 'holder', 'target_left', 'target_right', 'grip_left', 'pole_left'];

interface Bone {
  readonly at: number;
  readonly parent: Bone | null;
  readonly restBase: Vector3;
  readonly restTurn: Quaternion;
  readonly length: number;
  link: OtterLink | undefined;
  readonly base: Vector3;
  readonly turn: Quaternion;
  readonly size: Vector3;
  readonly local: Matrix4;
  readonly world: Matrix4;
}

export class ThreeMaths implements Otter<Bone> {
  readonly #rests: Rests;
  readonly #named = new Map<string, Bone>();
  readonly #bones: readonly Bone[];
  readonly #q = new Quaternion();
  readonly #base = new Vector3();
  readonly #size = new Vector3();

  constructor(rig: Rig) {
    this.#rests = restsOf(rig);
    const rest = this.#rests.names.filter((name) => !FIRST.includes(name));
    for (const name of [...FIRST, ...rest]) this.#named.set(name, this.#makeBone(name));
    for (const [name, bone] of this.#named) bone.link = OTTER_LINKS.get(name)?.(this);
    this.#bones = [...this.#named.values()];
  }

  #makeBone(name: string): Bone {
    const number = this.#rests.index.get(name)!;
    const parent = this.#rests.parents[number];
    return {
      at: 10 * number,
      parent: parent < 0 ? null : this.bone(this.#rests.names[parent]),
      restBase: this.#rests.bases[number],
      restTurn: this.#rests.turns[number],
      length: this.#rests.lengths[number],
      link: undefined,
      base: new Vector3(),
      turn: new Quaternion(),
      size: new Vector3(),
      local: new Matrix4(),
      world: new Matrix4(),
    };
  }

  run(pose: Float64Array): void {
    const switches = 10 * this.#bones.length;
    const converge = 0.03 * pose[switches + 1];
    const left = this.bone('target_left');
    for (const bone of this.#bones) {
      bone.base.fromArray(pose, bone.at).applyQuaternion(bone.restTurn).add(bone.restBase);
      bone.turn.copy(bone.restTurn).multiply(this.#q.fromArray(pose, bone.at + 3));
      bone.size.fromArray(pose, bone.at + 7);
      if (bone === left) bone.base.x -= converge;
      update(bone);
      bone.link?.(1 - pose[switches]);
    }
  }

  bone = (name: string): Bone => this.#named.get(name)!;
  world = (name: string): Matrix4 => this.bone(name).world;
  position = (bone: Bone, to: Vector3): Vector3 => to.setFromMatrixPosition(bone.world);
  tip = (bone: Bone, to: Vector3): Vector3 => to.set(0, 0, bone.length).applyMatrix4(bone.world);
  turn = (bone: Bone, to: Quaternion): Quaternion => this.#turnOf(bone, to);
  parentTurn = (bone: Bone, to: Quaternion): Quaternion => this.#turnOf(bone.parent!, to);
  restTurn = (name: string): Quaternion => this.bone(name).restTurn;
  offset = (from: string, to: string): Quaternion => this.#rests.offset(from, to);
  length = (name: string): number => this.bone(name).length;

  setTurn(bone: Bone, turn: Quaternion): void {
    bone.turn.copy(this.#turnOf(bone.parent!, this.#q)).invert().multiply(turn);
    update(bone);
  }

  setSize(bone: Bone, x: number, y: number, z: number): void {
    bone.size.set(x, y, z);
    update(bone);
  }

  /** From the matrix, as under sized bones there is no other way to it. */
  #turnOf(bone: Bone, to: Quaternion): Quaternion {
    bone.world.decompose(this.#base, to, this.#size);
    return to;
  }
}

function update(bone: Bone): void {
  bone.local.compose(bone.base, bone.turn, bone.size);
  if (bone.parent === null) bone.world.copy(bone.local);
  else bone.world.multiplyMatrices(bone.parent.world, bone.local);
}
