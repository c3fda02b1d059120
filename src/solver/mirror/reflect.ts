import type { Mesh, Rig } from '../document/rig.ts';
import { reflectBone } from './reflectBone.ts';
import { reflectDriver } from './reflectDriver.ts';
import { LAST_WORD, type SideWords, swapSide } from './sides.ts';
import { negate } from './values.ts';

/** Positions across x = 0; each triangle turned around, so that its front stays in front. */
function reflectMesh(mesh: Mesh): Mesh {
  const { positions, triangles } = mesh;
  return {
    ...mesh,
    positions: positions.map((value, i) => (i % 3 === 0 ? negate(value) : value)),
    triangles: triangles.map((_, i) => triangles[i % 3 === 0 ? i : i % 3 === 1 ? i + 1 : i - 1]!),
  };
}

/**
 * The whole rig across the plane x = 0 (rig space), sides swapped: side words in the names of bones and drivers, also
 * where the other side does not exist, and in every reference to them; never in names of switches and links.
 * Twice is the identity to the bit, but for a left out `times` that comes back as 1. A name of 64 characters that ends
 * in `left` grows past what is readable; read the result where names are not one's own.
 */
export function reflect(rig: Rig, sides: SideWords = LAST_WORD): Rig {
  const rename = (name: string) => swapSide(name, sides);
  return {
    ...rig,
    bones: rig.bones.map((bone) => reflectBone(bone, rename)),
    ...(rig.drivers && {
      drivers: rig.drivers.map((driver) => ({ ...reflectDriver(driver, rename), name: rename(driver.name) })),
    }),
    ...(rig.mesh && { mesh: reflectMesh(rig.mesh) }),
  };
}
