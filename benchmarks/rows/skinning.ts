/** Linear blend skinning with four weights: one mesh on a row of bones, all turned a little. */
import { type SkinnedMesh, Vector3 } from 'three';
import {
  type Bone,
  bindMesh,
  createState,
  evaluate,
  packPose,
  type Rig,
  skinMesh,
  type Vec3,
} from '../../src/solver/index.ts';
import { between, seeded } from '../../test/support/random.ts';
import type { Contest } from '../contest.ts';
import { flatSkinning } from '../peers/flatSkinning.ts';
import { threeSkinning } from '../peers/threeSkinning.ts';
import { programOf } from '../rigs/programOf.ts';

const BONES = 20;
const VERTICES = 5000;

export function skinning(): Contest {
  const rig = sleeve();
  const binding = bindMesh(rig)!;
  const program = programOf(rig);
  const state = createState(program);
  const turned = { turn: { angles: [5, 3, 8] as Vec3 } };
  evaluate(
    program,
    state,
    packPose(program, { bones: Object.fromEntries(rig.bones.map(({ name }) => [name, turned])) }),
  );
  const out = new Float64Array(3 * VERTICES);
  skinMesh(binding, state.world, out);
  const mesh = threeSkinning(rig, binding, state.world, program.restWorld);
  const place = new Vector3();
  const flat = flatSkinning(rig, binding, state.world, program.restWorld);
  return {
    work: 'linear skinning, 4 weights, 5,000 vertices',
    unit: 'ns a vertex',
    perCall: VERTICES,
    contenders: {
      ours: () => skinMesh(binding, state.world, out),
      'three getVertexPosition': () => {
        for (let i = 0; i < VERTICES; i++) mesh.getVertexPosition(i, place);
      },
      'flat loop': flat.run,
    },
    asks: [{ peer: 'three getVertexPosition', atLeast: 8 }],
    notes: [
      `the flat loop is ${largestOf(flat.out, out).toExponential(1)} m off`,
      `three is ${worstDifference(mesh, out, () => skinMesh(binding, state.world, out)).toExponential(1)} m off ours at most`,
    ],
  };
}

/** A row of bones along z, and vertices about it. */
function sleeve(): Rig {
  const random = seeded(4);
  const bones = Array.from(
    { length: BONES },
    (_, i): Bone => ({
      name: `rib_${i}`,
      parent: i === 0 ? null : `rib_${i - 1}`,
      role: 'skin',
      rest: { base: [0, 0, 0.1 * i], turn: [0, 0, 0, 1], length: 0.1 },
    }),
  );
  const positions = Array.from({ length: VERTICES }, () => [
    between(random, -0.1, 0.1),
    between(random, -0.1, 0.1),
    between(random, 0, 0.1 * BONES),
  ]).flat();
  return { format: 'counterpose/rig', version: 1, bones, mesh: { positions, triangles: [0, 1, 2] } };
}

const largestOf = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, value, i) => Math.max(most, Math.abs(value - b[i])), 0);

function worstDifference(mesh: SkinnedMesh, out: Float64Array, skin: () => void): number {
  skin();
  const place = new Vector3();
  return Math.max(
    ...Array.from({ length: VERTICES }, (_, i) => {
      mesh.getVertexPosition(i, place);
      return place.distanceTo(new Vector3().fromArray(out, 3 * i));
    }),
  );
}
