import { PULLS } from './binding.ts';

/** A bone at rest as a segment from base to tip, rig space, metres. */
export interface Segment {
  /** Where the bone stands in the document. */
  bone: number;
  base: readonly [number, number, number];
  /** Unit vector toward the tip. */
  along: readonly [number, number, number];
  length: number;
}

/** Squared distance from a point to the segment. */
function squaredDistance({ base, along, length }: Segment, x: number, y: number, z: number): number {
  const dx = x - base[0];
  const dy = y - base[1];
  const dz = z - base[2];
  const reach = Math.min(Math.max(dx * along[0] + dy * along[1] + dz * along[2], 0), length);
  const ex = dx - reach * along[0];
  const ey = dy - reach * along[1];
  const ez = dz - reach * along[2];
  return ex * ex + ey * ey + ez * ez;
}

/** Square metres added to d², so that a vertex on a bone still has a finite weight. */
const SOFTENING = 1e-6;

/**
 * Writes the four nearest bones and their weights for one vertex at `to`: weight ∝ 1/(d² + 1e-6)², summing to 1, nearest
 * first, the earlier in the document first where two are equally near.
 */
export function bindVertex(
  segments: readonly Segment[],
  position: readonly [number, number, number],
  indices: Int32Array,
  weights: Float64Array,
  to: number,
): void {
  let count = 0;
  for (const segment of segments) {
    const squared = squaredDistance(segment, ...position);
    let slot = count;
    while (slot > 0 && weights[to + slot - 1] > squared) slot--;
    if (slot === PULLS) continue;
    for (let k = Math.min(count, PULLS - 1); k > slot; k--) {
      weights[to + k] = weights[to + k - 1];
      indices[to + k] = indices[to + k - 1];
    }
    weights[to + slot] = squared;
    indices[to + slot] = segment.bone;
    count = Math.min(count + 1, PULLS);
  }
  distancesToWeights(weights, to, count);
}

/** Turns squared distances into weights in place. */
function distancesToWeights(weights: Float64Array, to: number, count: number): void {
  let sum = 0;
  for (let k = to; k < to + count; k++) {
    const soft = weights[k] + SOFTENING;
    weights[k] = 1 / (soft * soft);
    sum += weights[k];
  }
  for (let k = to; k < to + count; k++) weights[k] /= sum;
}
