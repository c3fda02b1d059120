import { useMemo } from 'react';
import { bindMesh, skinMesh } from '../../solver/index.ts';
import type { Solved } from '../pose/solved.ts';
import type { Drawing } from './drawing.ts';
import { meshEdges } from './meshEdges.ts';
import { type MeshLines, meshLines } from './meshLines.ts';
import { SvgPlate } from './SvgPlate.tsx';
import type { View } from './view.ts';

interface Props {
  drawing: Drawing;
  view: View;
  solved: Solved;
  label: string;
}

/** What is drawn on the paper, under names and handles. */
export function PlateGround({ drawing, view, solved, label }: Props) {
  const mesh = useMeshLines(solved, view);
  return (
    <svg className="wb-drawing" viewBox={`0 0 ${view.width} ${view.height}`} role="img" aria-label={label}>
      <SvgPlate drawing={drawing} view={view} mesh={mesh} />
    </svg>
  );
}

function useMeshLines({ rig, world }: Solved, view: View): MeshLines | null {
  const bound = useMemo(() => {
    const binding = bindMesh(rig);
    return binding && rig.mesh && { binding, triangles: rig.mesh.triangles, edges: meshEdges(rig.mesh) };
  }, [rig]);
  if (!bound) return null;
  const positions = new Float64Array(bound.binding.positions.length);
  skinMesh(bound.binding, world, positions);
  return meshLines(positions, bound.triangles, bound.edges, view);
}
