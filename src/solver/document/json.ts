import { JsonScanner } from './jsonScanner.ts';
import { type Key, reading, refuse } from './reader.ts';
import type { Reading } from './refusal.ts';
import { keyPath } from './structures.ts';
import { inWords, quoted } from './words.ts';

/** Lists and objects inside one another; documents of ours need about a dozen. */
const DEEPEST = 64;

/** Sets an own field, also where the key is the name of a prototype's setter. */
function setOwn(object: Record<string, unknown>, key: string, value: unknown): void {
  if (key !== '__proto__') object[key] = value;
  else Object.defineProperty(object, key, { value, enumerable: true, writable: true, configurable: true });
}

function readList(scan: JsonScanner, path: Key[]): unknown[] {
  const out: unknown[] = [];
  scan.at++;
  if (scan.takes(']')) return out;
  do {
    path.push(out.length);
    out.push(readValue(scan, path));
    path.pop();
  } while (scan.takes(','));
  if (!scan.takes(']')) scan.unexpected('"," or "]"');
  return out;
}

function readKey(scan: JsonScanner, path: Key[], out: object): string {
  if (scan.peek() !== '"') scan.unexpected("a field's name in double quotes");
  const start = scan.at;
  const key = scan.string();
  if (Object.hasOwn(out, key)) {
    refuse(`${quoted(key)} a second time at ${scan.position(start)}`, 'each field once', [...path, ...keyPath(key)]);
  }
  if (!scan.takes(':')) scan.unexpected('":" and a value');
  return key;
}

function readObject(scan: JsonScanner, path: Key[]): Record<string, unknown> {
  const out: Record<string, unknown> = {};
  scan.at++;
  if (scan.takes('}')) return out;
  do {
    const key = readKey(scan, path, out);
    path.push(key);
    setOwn(out, key, readValue(scan, path));
    path.pop();
  } while (scan.takes(','));
  if (!scan.takes('}')) scan.unexpected('"," or "}"');
  return out;
}

function readValue(scan: JsonScanner, path: Key[]): unknown {
  const first = scan.peek();
  const opens = first === '{' || first === '[';
  if (opens && path.length === DEEPEST) scan.unexpected(`at most ${DEEPEST} lists and objects inside one another`);
  if (first === '{') return readObject(scan, path);
  if (first === '[') return readList(scan, path);
  if (first === '"') return scan.string();
  return first === '-' || (first >= '0' && first <= '9') ? scan.number() : scan.word();
}

/**
 * The value that a JSON text (RFC 8259) stands for. Unlike JSON.parse it refuses a field that stands twice, of which one
 * would be dropped in silence, and says where a text stops being JSON in words that are the same in every browser.
 */
export function readJson(text: string): Reading<unknown> {
  return reading(() => {
    const scan = new JsonScanner(text);
    const value = readValue(scan, []);
    if (scan.peek() !== '') scan.unexpected(`the end of the text after ${inWords(value)}`);
    return value;
  });
}
