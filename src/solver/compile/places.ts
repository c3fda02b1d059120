import type { Bone, DrivenChannel, Point } from '../document/rig.ts';
import { INHERITS, REST_TURN } from '../geometry/restFrame.ts';
import { IDENTITY, type Layout, layOut, worldAt } from '../machine/layout.ts';
import { matrixOf, NOWHERE, type Rigid, relative, restOf } from './restTransforms.ts';
import type { RigIndex } from './rigIndex.ts';

const CHANNELS: readonly DrivenChannel[] = ['move.x', 'move.y', 'move.z', 'turn.x', 'turn.y', 'turn.z'];

/** Where everything of one rig lies in memory, while its code is written. Constants are laid down as they are asked for. */
export class Places {
  readonly index: RigIndex;
  readonly layout: Layout;
  /** Of each bone, rig space. */
  readonly rests: readonly Rigid[];
  readonly memory: number[];
  readonly #restLocals: number[];
  readonly #driven = new Map<number, number>();
  readonly #fractions = new Map<number, number>();

  constructor(index: RigIndex) {
    this.index = index;
    this.layout = layOut(index.bones.length, index.links.length, index.switches.length);
    this.rests = index.bones.map((bone) => restOf(bone.rest));
    this.memory = new Array(this.layout.rest).fill(0);
    for (const diagonal of [0, 4, 8]) this.memory[IDENTITY + diagonal] = 1;
    this.#restLocals = this.rests.map((rest, bone) => this.#layRestLocal(rest, index.parents[bone]));
  }

  #layRestLocal(rest: Rigid, parent: number): number {
    const { base, turn } = relative(parent < 0 ? NOWHERE : this.rests[parent], rest);
    return this.constant(...base, ...turn, ...matrixOf(turn));
  }

  /** Lays numbers down; returns where. */
  constant(...values: number[]): number {
    return this.memory.push(...values) - values.length;
  }

  bone(name: string): number {
    return this.index.boneIndex.get(name)!;
  }

  boneAt(bone: number): Bone {
    return this.index.bones[bone];
  }

  world(bone: string): number {
    return worldAt(this.bone(bone));
  }

  /** The world of a bone's parent; the identity for a root. */
  parentWorld(bone: number): number {
    const parent = this.index.parents[bone];
    return parent < 0 ? IDENTITY : worldAt(parent);
  }

  /** Translation, quaternion and matrix of a bone's rest local. */
  restLocal(bone: number): number {
    return this.#restLocals[bone];
  }

  /** Whether a bone is turned at rest as its parent is. */
  isAligned(bone: number): boolean {
    const turn = this.restLocal(bone) + REST_TURN;
    return this.memory.slice(turn, turn + 3).every((part) => part === 0);
  }

  /** What `writeRestFrame` reads. A root has the identity for its F, however it inherits. */
  frame(name: string): number[] {
    const bone = this.bone(name);
    return [this.parentWorld(bone), INHERITS[this.inherits(bone)], this.restLocal(bone)];
  }

  inherits(bone: number): keyof typeof INHERITS {
    return this.index.parents[bone] < 0 ? 'all' : (this.index.bones[bone].inherits ?? 'all');
  }

  /** What `writePoint` reads. */
  point({ bone, at = 0 }: Point): number[] {
    return [this.world(bone), this.constant(at * this.boneAt(this.bone(bone)).rest.length)];
  }

  link(bone: string, link: string): number {
    return this.index.linkIndex.get(`${bone}.${link}`)!;
  }

  weight(link: number): number {
    return this.layout.weights + link;
  }

  /** Where the fraction of a share lies; what is written for a driven one is overwritten before it is read. */
  fraction(link: number, written: number): number {
    return this.#kept(this.#fractions, link, () => this.constant(written));
  }

  switch(name: string): number {
    return this.layout.switches + this.index.switchIndex.get(name)!;
  }

  /** A switch's range, and the number of its owner's flag. */
  switchRange(name: string): { min: number; max: number; sliding: boolean; flag: number } {
    const owned = this.index.switches[this.index.switchIndex.get(name)!];
    const { min, max, sliding = false } = owned.switch;
    return { min, max, sliding, flag: this.index.links.length + owned.bone };
  }

  drivenChannel(bone: string, channel: DrivenChannel): number {
    return this.driven(this.bone(bone)) + CHANNELS.indexOf(channel);
  }

  /** Where the driven move and turn of a bone lie: three metres, three degrees. */
  driven(bone: number): number {
    return this.#kept(this.#driven, bone, () => this.constant(0, 0, 0, 0, 0, 0));
  }

  #kept(places: Map<number, number>, key: number, make: () => number): number {
    const known = places.get(key);
    if (known !== undefined) return known;
    const made = make();
    places.set(key, made);
    return made;
  }
}
