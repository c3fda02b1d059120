/**
 * Seeded numbers for tests: the same seed gives the same run everywhere.
 * The generator is Marsaglia's xorshift on 32 bits (Journal of Statistical Software 8(14), 2003; from memory).
 */
export type Random = () => number;

/** A source of numbers in [0, 1). */
export function seeded(seed: number): Random {
  let state = (seed ^ 0x9e3779b9) | 0 || 1;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4294967296;
  };
  for (let i = 0; i < 8; i++) next();
  return next;
}

export const between = (random: Random, least: number, most: number): number => least + (most - least) * random();

/** A whole number from `least` to `most`, both possible. */
export const whole = (random: Random, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));

export const chance = (random: Random, probability: number): boolean => random() < probability;

export const pick = <T>(random: Random, from: readonly T[]): T => from[whole(random, 0, from.length - 1)]!;

/** The same items in a random order (Fisher and Yates). */
export function shuffled<T>(random: Random, items: readonly T[]): T[] {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i--) {
    const j = whole(random, 0, i);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}

/** `{ [name]: value }` with the given chance, otherwise nothing to spread: for optional fields. */
export const sometimes = <K extends string, T>(random: Random, name: K, value: () => T, probability = 0.5) =>
  (chance(random, probability) ? { [name]: value() } : {}) as { [P in K]?: T };

/** Unit vector of `size` numbers, evenly over all directions: points of the cube until one lies in the ball. */
function direction(random: Random, size: number): number[] {
  for (;;) {
    const v = Array.from({ length: size }, () => between(random, -1, 1));
    const squared = v.reduce((sum, x) => sum + x * x, 0);
    if (squared > 0.01 && squared <= 1) return v.map((x) => x / Math.sqrt(squared));
  }
}

export const unitVector = (random: Random) => direction(random, 3) as [number, number, number];

/** [x, y, z, w], evenly over all turns. */
export const unitQuaternion = (random: Random) => direction(random, 4) as [number, number, number, number];
