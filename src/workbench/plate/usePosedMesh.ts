import { useMemo } from 'react';
import { bindMesh, skinMesh } from '../../solver/index.ts';
import type { Solved } from '../pose/solved.ts';
import { type Edge, meshEdges } from './meshEdges.ts';

export interface Skinned {
  /** Three numbers a vertex, rig space, metres. */
  readonly positions: Float64Array;
  readonly triangles: readonly number[];
  readonly edges: readonly Edge[];
}

/** The rig's mesh in the pose, if it has one. Bound anew only when the rig is another. */
export function usePosedMesh({ rig, world }: Solved): Skinned | null {
  const bound = useMemo(() => {
    const binding = bindMesh(rig);
    return binding && rig.mesh ? { binding, triangles: rig.mesh.triangles, edges: edgesOf(rig.mesh) } : null;
  }, [rig]);
  return useMemo(() => {
    if (!bound) return null;
    const positions = new Float64Array(bound.binding.positions.length);
    skinMesh(bound.binding, world, positions);
    return { positions, triangles: bound.triangles, edges: bound.edges };
  }, [bound, world]);
}

const known = new WeakMap<object, Edge[]>();

/** The edges of a mesh do not change with the rig around it. */
function edgesOf(mesh: Parameters<typeof meshEdges>[0]): Edge[] {
  const edges = known.get(mesh) ?? meshEdges(mesh);
  known.set(mesh, edges);
  return edges;
}
