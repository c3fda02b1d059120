/** Skins made of rings, and the vectors they take: for eye-meshes.mjs and vane-meshes.mjs. */

/**
 * Joins rings of equally many corners into a skin open at both ends; the corners run so that the triangles face outward.
 * Returns where corner k of a ring is.
 */
export function joinRings({ positions, triangles }, rings) {
  const corners = rings[0].length;
  const first = positions.length / 3;
  positions.push(...rings.flat(2).map((metres) => Number(metres.toFixed(6))));
  const corner = (ring, k) => first + corners * ring + (k % corners);
  for (let at = 0; at + 1 < rings.length; at++) {
    for (let k = 0; k < corners; k++) {
      const [a, b, c, d] = [corner(at, k), corner(at, k + 1), corner(at + 1, k + 1), corner(at + 1, k)];
      triangles.push(a, b, c, a, c, d);
    }
  }
  return corner;
}

/** Two directions across a third, so that side × over runs along it. */
export function across(along) {
  const side = Math.abs(along[1]) > 0.9 ? [1, 0, 0] : unit(cross([0, 1, 0], along));
  return [side, cross(along, side)];
}

export function plus(a, b) {
  return a.map((value, i) => value + b[i]);
}

export function times(a, factor) {
  return a.map((value) => value * factor);
}

function cross([a, b, c], [x, y, z]) {
  return [b * z - c * y, c * x - a * z, a * y - b * x];
}

function unit(a) {
  return times(a, 1 / Math.hypot(...a));
}
