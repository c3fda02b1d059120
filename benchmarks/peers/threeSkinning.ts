/** Skinning with three on the processor: a skinned mesh on bones that stand where worlds say. */
import { BufferAttribute, BufferGeometry, Matrix4, Skeleton, SkinnedMesh, Bone as ThreeBone } from 'three';
import type { Rig } from '../../src/solver/index.ts';

/** Four bones and four weights a vertex. */
export interface Skinned {
  readonly indices: Int32Array;
  readonly weights: Float64Array;
}

export function threeSkinning(
  rig: Rig,
  { indices, weights }: Skinned,
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

/** A world of twelve doubles as three has it. */
export function matrixAt(worlds: Float64Array, bone: number): Matrix4 {
  const [a, b, c, d, e, f, g, h, i, x, y, z] = worlds.subarray(12 * bone, 12 * bone + 12);
  return new Matrix4(a, d, g, x, b, e, h, y, c, f, i, z, 0, 0, 0, 1);
}
