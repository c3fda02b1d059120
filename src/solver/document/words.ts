/** Words for what stood in a document, safe to show: short, and with nothing unseen in them. */

const LONGEST = 40;
/** Controls, format and bidirectional characters, lone surrogates, private use, and every space but the plain one. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]|(?! )\p{Zs}/gu;

/** The text with unseen characters, and those that turn the order of the text around, written as `\u{202e}`. */
export const visible = (text: string): string =>
  text.replace(UNSEEN, (character) => `\\u{${character.codePointAt(0)!.toString(16)}}`);

/** The text in quotes, visible, cut to its first 40 characters. */
export function quoted(text: string): string {
  const start = Array.from(text.slice(0, 2 * LONGEST + 2));
  const cut = start.length > LONGEST;
  return `"${visible(start.slice(0, LONGEST).join(''))}${cut ? '…' : ''}"`;
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

function numberInWords(value: number): string {
  if (Number.isFinite(value)) return String(value);
  return Number.isNaN(value) ? 'not a number (NaN)' : `${value < 0 ? 'minus ' : ''}infinity`;
}

function listInWords(value: readonly unknown[]): string {
  if (value.length === 0) return 'an empty list';
  const short = value.length <= 4 && value.every((item) => typeof item === 'number');
  return short ? `[${value.map((item) => numberInWords(item as number)).join(', ')}]` : `a list of ${value.length}`;
}

function objectInWords(value: object): string {
  const count = Object.keys(value).length;
  return count === 0 ? 'an empty object' : `an object with ${counted(count, 'field', 'fields')}`;
}

/** A value in words: `"vane_left"`, `1.5`, `nothing` (for undefined), `an object with 3 fields`. */
export function inWords(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return quoted(value);
  if (typeof value === 'number') return numberInWords(value);
  if (typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return listInWords(value);
  return typeof value === 'object' ? objectInWords(value) : 'something that JSON cannot hold';
}

/** `a`, `a or b`, `a, b or c`. */
export function listed(words: readonly string[], joint = 'or'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${joint} ${words.at(-1)}`;
}
