/**
 * Volume inside a closed mesh, by signed tetrahedra from the origin: a sixth of a·(b×c) over its triangles
 * (divergence theorem; Zhang & Chen, ICIP 2001; from memory). Same unit of length as the positions, cubed.
 */
export function meshVolume(positions: ArrayLike<number>, triangles: ArrayLike<number>): number {
  let sixfold = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [bx, by, bz] = [positions[b]!, positions[b + 1]!, positions[b + 2]!];
    const [cx, cy, cz] = [positions[c]!, positions[c + 1]!, positions[c + 2]!];
    sixfold +=
      positions[a]! * (by * cz - bz * cy) +
      positions[a + 1]! * (bz * cx - bx * cz) +
      positions[a + 2]! * (bx * cy - by * cx);
  }
  return sixfold / 6;
}
