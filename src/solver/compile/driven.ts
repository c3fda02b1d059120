import type { RigIndex } from './rigIndex.ts';

/** What drivers write to. */
export interface Driven {
  /** Numbers of bones of which a channel is driven. */
  readonly bones: ReadonlySet<number>;
  /** Numbers of links whose weight is driven. */
  readonly weights: ReadonlySet<number>;
}

export function drivenThings(index: RigIndex): Driven {
  const bones = new Set<number>();
  const weights = new Set<number>();
  for (const { output } of index.drivers) {
    if ('channel' in output) bones.add(index.boneIndex.get(output.bone)!);
    if ('field' in output && output.field === 'weight') {
      weights.add(index.linkIndex.get(`${output.bone}.${output.link}`)!);
    }
  }
  return { bones, weights };
}
