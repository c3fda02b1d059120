import { readJson } from './json.ts';
import type { Reading } from './refusal.ts';

/** The largest document: 1 MiB of UTF-8. */
const LARGEST_BYTES = 1024 * 1024;

/** Bytes of a text in UTF-8; a lone surrogate counts as the three bytes of its replacement. */
export function utf8Bytes(text: string): number {
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.codePointAt(i)!;
    if (code > 0xffff) i++;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return bytes;
}

/** Reads a JSON text of at most 1 MiB with `read`. */
export function readText<T>(text: string, read: (value: unknown) => Reading<T>): Reading<T> {
  const bytes = text.length > LARGEST_BYTES ? text.length : utf8Bytes(text);
  if (bytes > LARGEST_BYTES) {
    const found = `a text of ${bytes} bytes or more`;
    return { ok: false, refusal: { place: '', found, expected: `at most ${LARGEST_BYTES} bytes (1 MiB)` } };
  }
  const json = readJson(text);
  return json.ok ? read(json.value) : json;
}
