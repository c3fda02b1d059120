import type { Mesh, Vec3 } from '../../solver/document/rig.ts';
import { cross, dot, minus, unit } from './vector.ts';

/** An edge of a mesh: two vertices, and the one or two triangles beside it. */
export interface Edge {
  readonly a: number;
  readonly b: number;
  readonly faces: readonly number[];
  /** Drawn from wherever it is seen: a border, or a fold of more than 35° at rest. */
  readonly fold: boolean;
}

const FOLD_COSINE = Math.cos((35 * Math.PI) / 180);

/** The edges of a mesh, each once; vertices at the same place at rest count as one. */
export function meshEdges(mesh: Mesh): Edge[] {
  const same = samePlaces(mesh.positions);
  const found = new Map<string, { a: number; b: number; faces: number[] }>();
  const faces = mesh.triangles.length / 3;
  for (let face = 0; face < faces; face++) {
    for (const [i, j] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      const a = mesh.triangles[3 * face + i]!;
      const b = mesh.triangles[3 * face + j]!;
      const key = [same[a]!, same[b]!].sort((p, q) => p - q).join(' ');
      const edge = found.get(key);
      if (edge) edge.faces.push(face);
      else found.set(key, { a, b, faces: [face] });
    }
  }
  const normals = faceNormals(mesh.positions, mesh.triangles);
  return [...found.values()].map((edge) => ({ ...edge, fold: isFold(edge.faces, normals) }));
}

/** Unit normals of the triangles, three numbers each. */
export function faceNormals(positions: ArrayLike<number>, triangles: ArrayLike<number>): Float64Array {
  const normals = new Float64Array(triangles.length);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => vertex(positions, triangles[i + k]!)) as [Vec3, Vec3, Vec3];
    normals.set(unit(cross(minus(b, a), minus(c, a)), [0, 0, 0]), i);
  }
  return normals;
}

export function vertex(positions: ArrayLike<number>, index: number): Vec3 {
  return [positions[3 * index]!, positions[3 * index + 1]!, positions[3 * index + 2]!];
}

function isFold(faces: readonly number[], normals: Float64Array): boolean {
  if (faces.length !== 2) return true;
  return dot(vertex(normals, faces[0]!), vertex(normals, faces[1]!)) < FOLD_COSINE;
}

function samePlaces(positions: readonly number[]): number[] {
  const first = new Map<string, number>();
  return Array.from({ length: positions.length / 3 }, (_, i) => {
    const key = vertex(positions, i)
      .map((value) => value.toFixed(7))
      .join(' ');
    if (!first.has(key)) first.set(key, i);
    return first.get(key)!;
  });
}
