/** Readers of single values. A number is returned with −0 as 0, because JSON writes both alike. */
import { nearest } from './nearest.ts';
import { type Reader, readItems, refuse, refuseValue } from './reader.ts';
import { inWords, listed, quoted } from './words.ts';

/** A finite number that `allows` it, or a refusal that expected `expected`. */
export const number =
  (expected: string, allows: (value: number) => boolean = () => true): Reader<number> =>
  (value) =>
    typeof value === 'number' && Number.isFinite(value) && allows(value) ? value + 0 : refuseValue(value, expected);

export const finite = number('a finite number');

/** A number from `least` to `most`, both allowed. */
export const numberFrom = (least: number, most: number, unit = ''): Reader<number> =>
  number(`a number from ${least} to ${most}${unit}`, (value) => value >= least && value <= most);

export const lengthAbove0 = number('a length above 0, in metres', (value) => value > 0);

/** A list of exactly `count` values, each read by `each`. */
export function tuple<T extends readonly unknown[], K = unknown>(
  count: number,
  noun: string,
  each: Reader<T[number], K>,
): Reader<T, K> {
  return (value, known) => {
    if (!Array.isArray(value) || value.length !== count) return refuseValue(value, `${noun}: a list of ${count}`);
    return readItems(value, each, known) as unknown as T;
  };
}

/** Exactly this value. */
export const exactly =
  <T extends string | number>(wanted: T, expected = inWords(wanted)): Reader<T> =>
  (value) =>
    value === wanted ? wanted : refuseValue(value, expected);

/** One of a few words; a near miss is named. */
export function oneOf<const T extends string>(words: readonly T[]): Reader<T> {
  const choices = listed(words.map(quoted));
  return (value) => {
    const found = words.find((word) => word === value);
    if (found !== undefined) return found;
    const near = typeof value === 'string' ? nearest(value, words) : null;
    return refuseValue(value, near ? `${quoted(near)}, perhaps: one of ${choices}` : `one of ${choices}`);
  };
}

export const boolean: Reader<boolean> = (value) =>
  typeof value === 'boolean' ? value : refuseValue(value, 'true or false');

export const text: Reader<string> = (value) => (typeof value === 'string' ? value : refuseValue(value, 'a text'));

const NAME = /^[A-Za-z0-9_-]{1,64}$/;

export const name: Reader<string> = (value) =>
  typeof value === 'string' && NAME.test(value)
    ? value
    : refuseValue(value, 'a name: 1 to 64 of the letters A–Z and a–z, the digits, _ and -');

/** A list of names or words without repeats. */
export function refuseRepeatedWords(words: readonly string[], noun: string): void {
  for (const [i, word] of words.entries()) {
    if (words.indexOf(word) < i) refuse(`${quoted(word)} a second time`, `each ${noun} once`, [i]);
  }
}
