/**
 * Numbers by seed for the corpus, with nothing but whole-number arithmetic, ×, ÷ and √, so that every engine draws the
 * same ones. The source is a 32-bit xorshift (Marsaglia, Journal of Statistical Software 8(14), 2003; from memory).
 */
export interface Draw {
  real(least: number, most: number): number;
  /** A whole number, both ends possible. */
  whole(least: number, most: number): number;
  one<T>(from: readonly T[]): T;
  often(probability: number): boolean;
}

export function drawBySeed(seed: number): Draw {
  let state = Math.imul(seed + 1, 0x9e3779b1) | 0 || 1;
  const word = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
  for (let i = 0; i < 16; i++) word();
  const fraction = () => word() / 4294967296;
  const whole = (least: number, most: number) => least + Math.floor(fraction() * (most - least + 1));
  return {
    real: (least, most) => least + (most - least) * fraction(),
    whole,
    one: (from) => from[whole(0, from.length - 1)],
    often: (probability) => fraction() < probability,
  };
}

/** `{ [name]: value() }` with the given probability, otherwise nothing to spread. */
export const perhaps = <K extends string, T>(draw: Draw, probability: number, name: K, value: () => T) =>
  (draw.often(probability) ? { [name]: value() } : {}) as { [P in K]?: T };

/** The same items in a drawn order (Fisher and Yates). */
export function shuffled<T>(draw: Draw, items: readonly T[]): T[] {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i--) {
    const j = draw.whole(0, i);
    [out[i], out[j]] = [out[j], out[i]];
  }
  return out;
}
