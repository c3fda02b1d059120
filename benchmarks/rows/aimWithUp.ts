/** Aiming +z at a target with +y upwards: 1,000 vanes and a kite that jumps between two places. */
import { mat4, vec3 } from 'gl-matrix';
import { Object3D, Vector3 } from 'three';
import type { Rig } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';
import { flatAimsUp } from '../peers/flatAims.ts';
import { linkAlone } from '../rigs/linkAlone.ts';
import { kiteBase, turns, vanes } from '../rigs/vanes.ts';

const COUNT = 1000;

export function aimWithUp(): Contest {
  const rig = vanes(COUNT, { up: { axis: '+y', toward: { direction: [0, 1, 0] } } });
  return {
    work: 'aim with up vector, 1,000 bones',
    unit: 'ns an aim',
    perCall: COUNT,
    contenders: {
      ours: withOurs(rig),
      'three lookAt': withThree(rig),
      'gl-matrix': withGlMatrix(rig),
      'flat loop': withLoop(rig),
    },
    asks: [{ peer: 'three lookAt', atLeast: 10 }],
  };
}

function withOurs(rig: Rig): () => void {
  const { state, run } = linkAlone(rig);
  const next = turns();
  return () => {
    state.world.set(next(), kiteBase(COUNT));
    run();
  };
}

/** In a scene, as an app would have it; the object's matrix follows. */
function withThree({ bones }: Rig): () => void {
  const scene = new Object3D();
  const objects = bones.map(({ rest }) => {
    const object = new Object3D();
    object.position.set(...rest.base);
    scene.add(object);
    return object;
  });
  scene.updateMatrixWorld(true);
  const kite = objects.pop()!;
  const place = new Vector3();
  const next = turns();
  return () => {
    kite.position.fromArray(next());
    kite.getWorldPosition(place);
    for (const object of objects) {
      object.lookAt(place);
      object.updateMatrixWorld();
    }
  };
}

function withGlMatrix({ bones }: Rig): () => void {
  const own = bones.slice(0, -1).map(({ rest }) => ({ base: vec3.fromValues(...rest.base), world: mat4.create() }));
  const up = vec3.fromValues(0, 1, 0);
  const next = turns();
  return () => {
    const kite = next() as vec3;
    // targetTo points −z at its target, so the points change places, and the base is put right after it.
    for (const { base, world } of own) {
      mat4.targetTo(world, kite, base, up);
      world[12] = base[0];
      world[13] = base[1];
      world[14] = base[2];
    }
  };
}

function withLoop(rig: Rig): () => void {
  const worlds = linkAlone(rig).state.world.slice();
  const next = turns();
  return () => {
    worlds.set(next(), kiteBase(COUNT));
    flatAimsUp(worlds, COUNT);
  };
}
