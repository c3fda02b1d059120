import type { Reading, Refusal } from '../solver/document/refusal.ts';

/** The input cannot be used: exit status 2 and one line on standard error. */
export class Unusable extends Error {
  override name = 'Unusable';
}

/** The arguments cannot be used: exit status 2, one line and the usage on standard error. */
export class UsageError extends Error {
  override name = 'UsageError';
}

/** Control characters and those that turn the direction of writing: a name in a file must not steer a terminal. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const UNPRINTABLE = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/g;

export function printable(text: string): string {
  return text.replace(UNPRINTABLE, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/**
 * One line that says what is wrong with an input, the same for every verb:
 * "ferry.json, at /bones/2/rest/length: found -0.1, expected a number above 0".
 * @param source the file, or where else the document came from
 */
export function refusalLine(source: string, refusal: Refusal): string {
  const place = refusal.place === '' ? '' : `, at ${refusal.place}`;
  return printable(`${source}${place}: found ${refusal.found}, expected ${refusal.expected}`);
}

/** The value of a reading. Throws Unusable where there is none. */
export function accept<T>(source: string, reading: Reading<T>): T {
  if (reading.ok) return reading.value;
  throw new Unusable(refusalLine(source, reading.refusal));
}
