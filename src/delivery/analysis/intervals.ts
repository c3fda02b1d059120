/** The normal deviate that leaves 2.5 % on either side. */
const Z = 1.959963984540054;

export type Interval = readonly [low: number, high: number];

/**
 * 95 % interval of a proportion after Wilson (J. Am. Stat. Assoc. 22, 1927; from memory). Also used for a mean mark from 0
 * to 1, for which it is too wide rather than too narrow, since no such marks spread more than rights and wrongs do.
 */
export function proportionInterval(share: number, count: number): Interval | null {
  if (count === 0) return null;
  const spread = Z * Math.sqrt((share * (1 - share)) / count + (Z * Z) / (4 * count * count));
  const middle = share + (Z * Z) / (2 * count);
  const whole = 1 + (Z * Z) / count;
  return [(middle - spread) / whole, (middle + spread) / whole];
}

/** 95 % interval of a correlation by Fisher's z (Metron 1, 1921; from memory); null under four learners or at ±1. */
export function correlationInterval(r: number | null, count: number): Interval | null {
  if (r === null || count < 4 || Math.abs(r) >= 1) return null;
  const spread = Z / Math.sqrt(count - 3);
  return [Math.tanh(Math.atanh(r) - spread), Math.tanh(Math.atanh(r) + spread)];
}

/**
 * 95 % interval of alpha after Bonett (J. Educ. Behav. Stat. 27, 2002, p. 335; from memory): ln(1 − α) is nearly normal
 * with variance 2k/((k − 1)(n − 2)).
 */
export function alphaInterval(value: number | null, items: number, count: number): Interval | null {
  if (value === null || items < 2 || count < 3 || value >= 1) return null;
  const spread = Z * Math.sqrt((2 * items) / ((items - 1) * (count - 2)));
  return [1 - (1 - value) * Math.exp(spread), 1 - (1 - value) * Math.exp(-spread)];
}
