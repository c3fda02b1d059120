import { type Edge, faceNormals, vertex } from './meshEdges.ts';
import { dot } from './vector.ts';
import { project, type View } from './view.ts';

/** A skinned mesh as two paths: a wash where it is, and the edges one would draw by hand. */
export interface MeshLines {
  readonly wash: string;
  readonly edges: string;
}

export function meshLines(
  positions: ArrayLike<number>,
  triangles: readonly number[],
  edges: readonly Edge[],
  view: View,
): MeshLines {
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
  const drawn = edges.filter((edge) => isDrawn(edge, toward));
  return { wash, edges: drawn.map(({ a, b }) => `M${at(a)}L${at(b)}`).join('') };
}

/** An edge is drawn where a face toward the reader meets one turned away, and where a fold is toward the reader. */
export function isDrawn({ faces, fold }: Edge, toward: ArrayLike<number>): boolean {
  const front = faces.filter((face) => toward[face]! > 1e-6).length;
  return front > 0 && (fold || front < faces.length);
}

/** How far each face is turned toward the reader. */
export function towardOf(normals: Float64Array, view: Pick<View, 'toward'>): Float64Array {
  return Float64Array.from({ length: normals.length / 3 }, (_, face) => dot(vertex(normals, face), view.toward));
}
