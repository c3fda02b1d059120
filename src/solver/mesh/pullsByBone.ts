import { type Binding, PULLS, type Pulls } from './binding.ts';

/** Lists weights by bone that are given by vertex, four each. Those that are 0 are left out. */
export function pullsByBone(skinBones: Int32Array, indices: Int32Array, weights: Float64Array): Pulls {
  const lists = new Map(Array.from(skinBones, (bone) => [bone, { vertices: [] as number[], weights: [] as number[] }]));
  weights.forEach((weight, pull) => {
    if (weight === 0) return;
    const list = lists.get(indices[pull]!)!;
    list.vertices.push(3 * Math.floor(pull / PULLS));
    list.weights.push(weight);
  });
  return {
    vertices: [...lists.values()].map(({ vertices }) => Int32Array.from(vertices)),
    weights: [...lists.values()].map((list) => Float64Array.from(list.weights)),
  };
}

/** The same mesh pulled with weights of its own, four bones and weights a vertex, in place of those by distance. */
export function withWeights(binding: Binding, { indices, weights }: Pick<Binding, 'indices' | 'weights'>): Binding {
  return { ...binding, indices, weights, pulls: pullsByBone(binding.skinBones, indices, weights) };
}
