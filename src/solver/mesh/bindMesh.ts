import type { Bone, Mesh, Rig } from '../document/rig.ts';
import { matrixOfQuaternion } from '../geometry/quaternion.ts';
import { AFFINE_STRIDE, type Binding, DUAL_STRIDE, PULLS } from './binding.ts';
import { bindVertex, type Segment } from './nearestBones.ts';
import { pullsByBone } from './pullsByBone.ts';
import { SCRATCH_LENGTH } from './rigidPart.ts';

/** Nine per bone: the inverse of its turn at rest. */
function restTurnInverses(bones: readonly Bone[]): Float64Array {
  const out = new Float64Array(9 * bones.length);
  const matrix = new Float64Array(13);
  for (const [i, { rest }] of bones.entries()) {
    const [x, y, z, w] = rest.turn;
    matrix.set([-x, -y, -z, w], 9);
    matrixOfQuaternion(matrix, 9, 0);
    out.set(matrix.subarray(0, 9), 9 * i);
  }
  return out;
}

/** A bone as a segment. Its z axis is the third row of the inverse of its turn. */
function segmentOf({ rest }: Bone, bone: number, restTurnInverse: Float64Array): Segment {
  const at = 9 * bone;
  const along = [restTurnInverse[at + 2], restTurnInverse[at + 5], restTurnInverse[at + 8]] as const;
  return { bone, base: rest.base, along, length: rest.length };
}

/**
 * Binds the rig's mesh to its rest pose: per vertex the four nearest bones of role `skin`, by distance d in metres to
 * the segment from base to tip, with weights ∝ 1/(d² + 1e-6)² that sum to 1. Null where the rig has no mesh.
 */
export function bindMesh(rig: Rig): Binding | null {
  return rig.mesh ? bind(rig.bones, rig.mesh) : null;
}

function bind(bones: readonly Bone[], mesh: Mesh): Binding {
  const positions = Float64Array.from(mesh.positions);
  const vertices = positions.length / 3;
  const indices = new Int32Array(PULLS * vertices);
  const weights = new Float64Array(PULLS * vertices);
  const restTurnInverse = restTurnInverses(bones);
  const skinBones = Int32Array.from([...bones.keys()].filter((i) => bones[i]!.role === 'skin'));
  const segments = Array.from(skinBones, (i) => segmentOf(bones[i]!, i, restTurnInverse));
  for (let v = 0; v < vertices; v++) {
    const at = 3 * v;
    bindVertex(segments, [positions[at], positions[at + 1], positions[at + 2]], indices, weights, PULLS * v);
  }
  return {
    skinning: mesh.skinning ?? 'linear',
    positions,
    indices,
    weights,
    skinBones,
    pulls: pullsByBone(skinBones, indices, weights),
    restTurnInverse,
    restBase: Float64Array.from(bones.flatMap(({ rest }) => rest.base)),
    room: {
      affine: new Float64Array(AFFINE_STRIDE * bones.length),
      dual: new Float64Array(DUAL_STRIDE * bones.length),
      scratch: new Float64Array(SCRATCH_LENGTH),
    },
  };
}
