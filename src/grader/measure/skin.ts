import { type Binding, bindMesh, skinMesh } from '../../solver/index.ts';
import { type Subject, worldAt } from '../subject.ts';

/** The mesh of a subject, bound to its bones. */
export interface Skin {
  readonly binding: Binding;
  readonly triangles: Int32Array;
  readonly skinned: Float64Array;
}

/** Null where the rig has no mesh. Bound once a subject. */
export function skinOf(subject: Subject): Skin | null {
  const { mesh } = subject.rig;
  if (!mesh) return null;
  subject.skin ??= {
    binding: bindMesh(subject.rig)!,
    triangles: Int32Array.from(mesh.triangles),
    skinned: new Float64Array(mesh.positions.length),
  };
  return subject.skin;
}

/** The mesh as the pose has it: three numbers a vertex, rig space, metres; overwritten by the next call. */
export function skinnedAt(subject: Subject, skin: Skin, values: Float64Array): Float64Array {
  subject.skinnings++;
  skinMesh(skin.binding, worldAt(subject, values), skin.skinned);
  return skin.skinned;
}
