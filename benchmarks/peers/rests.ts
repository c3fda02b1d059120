import { Quaternion, Vector3 } from 'three';
import type { Rig } from '../../src/solver/index.ts';

/** What three's rigs need of the rest pose: each bone's place under its parent, and turns between bones. */
export interface Rests {
  readonly names: readonly string[];
  readonly index: ReadonlyMap<string, number>;
  readonly parents: readonly number[];
  readonly bases: readonly Vector3[];
  readonly turns: readonly Quaternion[];
  readonly lengths: readonly number[];
  offset(from: string, to: string): Quaternion;
}

export function restsOf({ bones }: Rig): Rests {
  const index = new Map(bones.map(({ name }, i) => [name, i]));
  const parents = bones.map(({ parent }) => (parent === null ? -1 : index.get(parent)!));
  const world = bones.map(({ rest }) => ({ base: new Vector3(...rest.base), turn: new Quaternion(...rest.turn) }));
  const local = world.map(({ base, turn }, i) => {
    if (parents[i] < 0) return { base, turn };
    const above = world[parents[i]];
    const back = above.turn.clone().invert();
    return { base: base.clone().sub(above.base).applyQuaternion(back), turn: back.clone().multiply(turn) };
  });

  return {
    names: bones.map(({ name }) => name),
    index,
    parents,
    bases: local.map(({ base }) => base),
    turns: local.map(({ turn }) => turn),
    lengths: bones.map(({ rest }) => rest.length),
    offset: (from, to) => world[index.get(from)!].turn.clone().invert().multiply(world[index.get(to)!].turn),
  };
}
