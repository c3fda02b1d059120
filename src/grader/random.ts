/**
 * Seeded whole numbers and fractions, the same everywhere: mulberry32 (public domain, T. Ettinger 2017;
 * constants from memory), on 32-bit integer arithmetic only.
 */
export function randomOf(seed: number): () => number {
  const low = seed % 4294967296;
  let state = (low ^ Math.imul(Math.floor(seed / 4294967296) + 1, 0x9e3779b9)) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
