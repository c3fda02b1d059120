import type { Binding } from './binding.ts';
import { blendDual } from './dual.ts';
import { blendLinear } from './linear.ts';
import { writeRigidPart } from './rigidPart.ts';
import { writeSkinMatrix } from './skinMatrix.ts';

/**
 * Writes the posed vertices to `out`, three each, rig space, metres. Allocates nothing.
 * Linear blending takes over all that the bones do, sizes and shear included. Dual quaternions blend turning and moving
 * only, so each bone's sizes and shear are first applied to the mesh at rest, about its base and blended linearly.
 * Without a skin bone nothing pulls at the mesh, and it stays at rest.
 * @param world WORLD_STRIDE doubles per bone, as a State has them after an evaluation
 */
export function skinMesh(binding: Binding, world: Float64Array, out: Float64Array): void {
  const { skinBones, skinning, positions } = binding;
  if (skinBones.length === 0) {
    out.set(positions);
    return;
  }
  const prepare = skinning === 'dual' ? writeRigidPart : writeSkinMatrix;
  for (let i = 0; i < skinBones.length; i++) prepare(binding, world, skinBones[i]);
  if (skinning === 'dual') blendDual(binding, out);
  else blendLinear(binding, out);
}
