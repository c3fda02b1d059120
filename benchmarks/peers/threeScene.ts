/**
 * The rig of rigs/otter.ts the way a scene graph invites one to write it: an Object3D a bone; each link asks for world
 * positions and quaternions, works out a world turn, sets the bone's own and has the worlds below it updated.
 */
import { type Matrix4, Object3D, Quaternion, Vector3 } from 'three';
import type { Rig } from '../../src/solver/index.ts';
import { OTTER_LINKS, type Otter } from './otterLinks.ts';
import { type Rests, restsOf } from './rests.ts';

export class ThreeScene implements Otter {
  readonly #rests: Rests;
  readonly #objects: readonly Object3D[];
  readonly #scene = new Object3D();
  readonly #q = new Quaternion();
  readonly #v = new Vector3();

  constructor(rig: Rig) {
    this.#rests = restsOf(rig);
    this.#objects = rig.bones.map(() => new Object3D());
    this.#rests.parents.forEach((parent, i) => {
      (parent < 0 ? this.#scene : this.#objects[parent]).add(this.#objects[i]);
    });
  }

  run(pose: Float64Array): void {
    const { bases, turns } = this.#rests;
    this.#objects.forEach((object, i) => {
      object.position
        .fromArray(pose, 10 * i)
        .applyQuaternion(turns[i])
        .add(bases[i]);
      object.quaternion.copy(turns[i]).multiply(this.#q.fromArray(pose, 10 * i + 3));
      object.scale.fromArray(pose, 10 * i + 7);
    });
    const switches = 10 * this.#objects.length;
    this.#object('target_left').position.x -= 0.03 * pose[switches + 1];
    this.#scene.updateMatrixWorld(true);
    for (const [name, link] of OTTER_LINKS) if (this.#rests.index.has(name)) link(this, 1 - pose[switches]);
  }

  world = (name: string): Matrix4 => this.#object(name).matrixWorld;
  position = (name: string, to: Vector3): Vector3 => this.#object(name).getWorldPosition(to);
  tip = (name: string, to: Vector3): Vector3 => this.#object(name).localToWorld(to.set(0, 0, this.length(name)));
  turn = (name: string, to: Quaternion): Quaternion => this.#object(name).getWorldQuaternion(to);
  parentTurn = (name: string, to: Quaternion): Quaternion => this.#object(name).parent!.getWorldQuaternion(to);
  restTurn = (name: string): Quaternion => this.#rests.turns[this.#number(name)];
  offset = (from: string, to: string): Quaternion => this.#rests.offset(from, to);
  length = (name: string): number => this.#rests.lengths[this.#number(name)];

  setTurn(name: string, turn: Quaternion): void {
    const object = this.#object(name);
    object.quaternion.copy(object.parent!.getWorldQuaternion(this.#q).invert()).multiply(turn);
    object.updateWorldMatrix(false, true);
  }

  setSize(name: string, x: number, y: number, z: number): void {
    const object = this.#object(name);
    object.scale.set(x, y, z).divide(object.parent!.getWorldScale(this.#v));
    object.updateWorldMatrix(false, true);
  }

  #number = (name: string): number => this.#rests.index.get(name)!;
  #object(name: string): Object3D {
    return this.#objects[this.#number(name)];
  }
}
