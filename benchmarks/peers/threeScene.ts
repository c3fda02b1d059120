/**
 * The rig of rigs/otter.ts the way a scene graph invites one to write it: an Object3D a bone; each link asks for world
 * positions and quaternions, works out a world turn, sets the bone's own and has the worlds below it updated.
 */
import { type Matrix4, Object3D, Quaternion, Vector3 } from 'three';
import type { Rig } from '../../src/solver/index.ts';
import { OTTER_LINKS, type Otter, type OtterLink } from './otterLinks.ts';
import { type Rests, restsOf } from './rests.ts';

export class ThreeScene implements Otter<Object3D> {
  readonly #rests: Rests;
  readonly #objects: readonly Object3D[];
  readonly #lengths: ReadonlyMap<Object3D, number>;
  readonly #links: readonly OtterLink[];
  readonly #converging: Object3D;
  readonly #scene = new Object3D();
  readonly #q = new Quaternion();
  readonly #v = new Vector3();

  constructor(rig: Rig) {
    this.#rests = restsOf(rig);
    this.#objects = rig.bones.map(() => new Object3D());
    this.#lengths = new Map(this.#objects.map((object, i) => [object, this.#rests.lengths[i]]));
    this.#rests.parents.forEach((parent, i) => {
      (parent < 0 ? this.#scene : this.#objects[parent]).add(this.#objects[i]);
    });
    this.#links = [...OTTER_LINKS].filter(([name]) => this.#rests.index.has(name)).map(([, make]) => make(this));
    this.#converging = this.bone('target_left');
  }

  run(pose: Float64Array): void {
    const { bases, turns } = this.#rests;
    for (let i = 0; i < this.#objects.length; i++) {
      const object = this.#objects[i];
      object.position
        .fromArray(pose, 10 * i)
        .applyQuaternion(turns[i])
        .add(bases[i]);
      object.quaternion.copy(turns[i]).multiply(this.#q.fromArray(pose, 10 * i + 3));
      object.scale.fromArray(pose, 10 * i + 7);
    }
    const switches = 10 * this.#objects.length;
    this.#converging.position.x -= 0.03 * pose[switches + 1];
    this.#scene.updateMatrixWorld(true);
    for (const link of this.#links) link(1 - pose[switches]);
  }

  bone = (name: string): Object3D => this.#objects[this.#rests.index.get(name)!];
  world = (name: string): Matrix4 => this.bone(name).matrixWorld;
  position = (bone: Object3D, to: Vector3): Vector3 => bone.getWorldPosition(to);
  tip = (bone: Object3D, to: Vector3): Vector3 => bone.localToWorld(to.set(0, 0, this.#lengths.get(bone)!));
  turn = (bone: Object3D, to: Quaternion): Quaternion => bone.getWorldQuaternion(to);
  parentTurn = (bone: Object3D, to: Quaternion): Quaternion => bone.parent!.getWorldQuaternion(to);
  restTurn = (name: string): Quaternion => this.#rests.turns[this.#rests.index.get(name)!];
  offset = (from: string, to: string): Quaternion => this.#rests.offset(from, to);
  length = (name: string): number => this.#rests.lengths[this.#rests.index.get(name)!];

  setTurn(bone: Object3D, turn: Quaternion): void {
    bone.quaternion.copy(bone.parent!.getWorldQuaternion(this.#q).invert()).multiply(turn);
    bone.updateWorldMatrix(false, true);
  }

  setSize(bone: Object3D, x: number, y: number, z: number): void {
    bone.scale.set(x, y, z).divide(bone.parent!.getWorldScale(this.#v));
    bone.updateWorldMatrix(false, true);
  }
}
