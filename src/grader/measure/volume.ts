/**
 * Volume inside a closed mesh, by signed tetrahedra from the origin: a sixth of a·(b×c) over its triangles
 * (divergence theorem; Zhang & Chen, ICIP 2001; from memory). Same unit of length as the positions, cubed.
 */
export function meshVolume(positions: ArrayLike<number>, triangles: ArrayLike<number>): number {
  let sixfold = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    // One by one: taken apart as a list, each corner would cost a list.
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const bx = positions[b]!;
    const by = positions[b + 1]!;
    const bz = positions[b + 2]!;
    const cx = positions[c]!;
    const cy = positions[c + 1]!;
    const cz = positions[c + 2]!;
    sixfold +=
      positions[a]! * (by * cz - bz * cy) +
      positions[a + 1]! * (bz * cx - bx * cz) +
      positions[a + 2]! * (bx * cy - by * cx);
  }
  return sixfold / 6;
}
