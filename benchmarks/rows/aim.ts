/** The shortest turn of a bone's +z onto a target: 1,000 vanes and a kite that jumps between two places. */
import { mat4, quat, vec3 } from 'gl-matrix';
import { Object3D, Quaternion, Vector3 } from 'three';
import { createState, evaluate, packPose, type Rig, type Vec3 } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';
import { flatAims } from '../peers/flatAims.ts';
import { linkAlone } from '../rigs/linkAlone.ts';
import { programOf } from '../rigs/programOf.ts';
import { kiteBase, turns, vanes } from '../rigs/vanes.ts';

const COUNT = 1000;

export function aim(): Contest {
  const rig = vanes(COUNT, {});
  return {
    work: 'shortest-turn aim, 1,000 bones',
    unit: 'ns an aim',
    perCall: COUNT,
    contenders: {
      ours: withOurs(rig),
      three: withThree(rig),
      'gl-matrix': withGlMatrix(rig),
      'flat loop': withLoop(rig),
    },
    asks: [{ peer: 'three', atLeast: 2.5 }],
    notes: [
      `${worstNearOpposite().toExponential(1)} rad off at most, from 1e-1 to 1.1e-9 rad next to opposite (asked: ≤ 1e-7)`,
    ],
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

function withThree({ bones }: Rig): () => void {
  const [kite, ...objects] = [bones.at(-1)!, ...bones.slice(0, -1)].map(({ rest }) => {
    const object = new Object3D();
    object.position.set(...rest.base);
    object.updateMatrixWorld();
    return object;
  });
  const next = turns();
  const [way, axis, turn] = [new Vector3(), new Vector3(), new Quaternion()];
  return () => {
    kite.position.fromArray(next());
    kite.updateMatrixWorld();
    for (const object of objects) {
      way.setFromMatrixPosition(kite.matrixWorld).sub(object.position).normalize();
      axis.set(0, 0, 1).applyQuaternion(object.quaternion);
      object.quaternion.premultiply(turn.setFromUnitVectors(axis, way));
      object.updateMatrixWorld();
    }
  };
}

function withGlMatrix({ bones }: Rig): () => void {
  const own = bones.slice(0, -1).map(({ rest }) => ({
    base: vec3.fromValues(...rest.base),
    turn: quat.create(),
    size: vec3.fromValues(1, 1, 1),
    world: mat4.create(),
  }));
  const next = turns();
  const [kite, way, axis, turn, z] = [
    vec3.create(),
    vec3.create(),
    vec3.create(),
    quat.create(),
    vec3.fromValues(0, 0, 1),
  ];
  return () => {
    vec3.copy(kite, next() as vec3);
    for (const one of own) {
      vec3.normalize(way, vec3.subtract(way, kite, one.base));
      vec3.transformQuat(axis, z, one.turn);
      quat.multiply(one.turn, quat.rotationTo(turn, axis, way), one.turn);
      mat4.fromRotationTranslationScale(one.world, one.turn, one.base, one.size);
    }
  };
}

function withLoop(rig: Rig): () => void {
  const { state } = linkAlone(rig);
  const worlds = state.world.slice();
  const next = turns();
  return () => {
    worlds.set(next(), kiteBase(COUNT));
    flatAims(worlds, COUNT);
  };
}

/** The largest angle between +z and the target, radians, over targets more and more straight behind. */
function worstNearOpposite(): number {
  const program = programOf(vanes(1, {}));
  const state = createState(program);
  const offs = [1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1.1e-9];
  return Math.max(
    ...offs.map((offRad) => {
      const way: Vec3 = [0.6 * Math.sin(offRad), 0.8 * Math.sin(offRad), -Math.cos(offRad)];
      const { base } = program.rig.bones[0].rest;
      const kite = program.rig.bones[1].rest.base;
      const move = way.map((x, i) => base[i] + x - kite[i]) as unknown as Vec3;
      evaluate(program, state, packPose(program, { bones: { kite: { move } } }));
      const reached = [12, 13, 14].map((i, axis) => state.world[i + 9] - state.world[9 + axis]);
      const length = Math.hypot(...reached);
      return Math.hypot(...[6, 7, 8].map((i, axis) => state.world[i] - reached[axis] / length));
    }),
  );
}
