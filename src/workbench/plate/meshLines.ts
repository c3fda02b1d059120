import type { Stroke } from './drawing.ts';
import { type Edge, faceNormals, vertex } from './meshEdges.ts';
import type { Skinned } from './usePosedMesh.ts';
import { dot } from './vector.ts';
import { project, type View } from './view.ts';

/** The outline of a skinned mesh as a wash: its faces toward the reader, as path data. */
export function meshWash({ positions, triangles }: Skinned, view: View): string {
  const toward = towardOf(faceNormals(positions, triangles), view);
  const at = (index: number) => {
    const [x, y] = project(view, vertex(positions, index));
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  };
  let wash = '';
  for (let face = 0; face < toward.length; face++) {
    if (toward[face]! <= 0) continue;
    const [a, b, c] = [0, 1, 2].map((k) => at(triangles[3 * face + k]!));
    wash += `M${a}L${b}L${c}Z`;
  }
  return wash;
}

/** The edges of a skinned mesh that one would draw by hand, as strokes. */
export function meshStrokes({ positions, triangles, edges }: Skinned, view: View): Stroke[] {
  const toward = towardOf(faceNormals(positions, triangles), view);
  return edges
    .filter((edge) => isDrawn(edge, toward))
    .map(({ a, b }) => ({
      points: [vertex(positions, a), vertex(positions, b)],
      tone: 'edge',
      width: 0.9,
      dash: 'none',
    }));
}

/** An edge is drawn where a face toward the reader meets one turned away, and where a fold is toward the reader. */
export function isDrawn({ faces, fold }: Edge, toward: ArrayLike<number>): boolean {
  const front = faces.filter((face) => toward[face]! > 1e-6).length;
  return front > 0 && (fold || front < faces.length);
}

/** How far each face is turned toward the reader. */
function towardOf(normals: Float64Array, view: Pick<View, 'toward'>): Float64Array {
  return Float64Array.from({ length: normals.length / 3 }, (_, face) => dot(vertex(normals, face), view.toward));
}
