/** Linear blend skinning with four weights: one mesh on a row of bones, all turned a little. */
import { BufferAttribute, BufferGeometry, Matrix4, Skeleton, SkinnedMesh, Bone as ThreeBone, Vector3 } from 'three';
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
  const mesh = withThree(rig, binding.indices, binding.weights, state.world, program.restWorld);
  const place = new Vector3();
  return {
    work: 'linear skinning, 4 weights, 5,000 vertices',
    unit: 'ns a vertex',
    perCall: VERTICES,
    contenders: {
      ours: () => skinMesh(binding, state.world, out),
      'three getVertexPosition': () => {
        for (let i = 0; i < VERTICES; i++) mesh.getVertexPosition(i, place);
      },
    },
    asks: [{ peer: 'three getVertexPosition', atLeast: 8 }],
    notes: [
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

function withThree(
  rig: Rig,
  indices: Int32Array,
  weights: Float64Array,
  worlds: Float64Array,
  rests: Float64Array,
): SkinnedMesh {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(rig.mesh!.positions), 3));
  geometry.setAttribute('skinIndex', new BufferAttribute(new Uint16Array(indices), 4));
  geometry.setAttribute('skinWeight', new BufferAttribute(new Float32Array(weights), 4));
  const bones = rig.bones.map((_, i) => {
    const bone = new ThreeBone();
    bone.matrixWorld.copy(matrixAt(worlds, i));
    return bone;
  });
  const inverses = rig.bones.map((_, i) => matrixAt(rests, i).invert());
  const mesh = new SkinnedMesh(geometry);
  mesh.bind(new Skeleton(bones, inverses), new Matrix4());
  return mesh;
}

function matrixAt(worlds: Float64Array, bone: number): Matrix4 {
  const [a, b, c, d, e, f, g, h, i, x, y, z] = worlds.subarray(12 * bone, 12 * bone + 12);
  return new Matrix4(a, d, g, x, b, e, h, y, c, f, i, z, 0, 0, 0, 1);
}

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
