/**
 * The kit every reader of a document is made of. A reader is a function from a value to what it stands for; it
 * refuses by throwing, and only `reading` catches. Places are put together on the way out, so good documents pay nothing.
 */
import type { Reading } from './refusal.ts';
import { inWords } from './words.ts';

/**
 * Reads one value, given what the rest of the document declares. It takes nothing from prototypes, returns fresh
 * values only, and reading `undefined` refuses with `nothing` and what was expected: the words for a missing field.
 */
export type Reader<T, K = unknown> = (value: unknown, known: K) => T;

export type Key = string | number;

class Refused extends Error {
  readonly path: Key[];
  readonly found: string;
  readonly expected: string;
  constructor(path: readonly Key[], found: string, expected: string) {
    super(expected);
    this.path = [...path];
    this.found = found;
    this.expected = expected;
  }
}

/** Refuses the value being read, or what stands at `path` inside it. */
export function refuse(found: string, expected: string, path: readonly Key[] = []): never {
  throw new Refused(path, found, expected);
}

/** Refuses a value in the words of `inWords`. */
export const refuseValue = (value: unknown, expected: string): never => refuse(inWords(value), expected);

function placed(error: unknown, path: readonly Key[]): unknown {
  if (error instanceof Refused) error.path.unshift(...path);
  return error;
}

/** Reads what stands at `key` of the value being read, so that a refusal names the key. */
export function readAt<T, K>(key: Key, read: Reader<T, K>, value: unknown, known: K): T {
  try {
    return read(value, known);
  } catch (error) {
    throw placed(error, [key]);
  }
}

/** Reads every item of a list, a hole as nothing. */
export function readItems<T, K>(items: readonly unknown[], read: Reader<T, K>, known: K): T[] {
  const out: T[] = [];
  for (let i = 0; i < items.length; i++) out.push(readAt(i, read, items[i], known));
  return out;
}

/** Runs a check on what stands at `path`, so that a refusal names the path. */
export function within<T>(path: readonly Key[], check: () => T): T {
  try {
    return check();
  } catch (error) {
    throw placed(error, path);
  }
}

/** RFC 6901. */
const pointer = (path: readonly Key[]): string =>
  path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** Runs readers and turns what they throw into a refusal. */
export function reading<T>(read: () => T): Reading<T> {
  try {
    return { ok: true, value: read() };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return {
      ok: false,
      refusal: { place: pointer(error.path), found: error.found, expected: error.expected },
    };
  }
}

/** The value of a reading, or its refusal passed on from inside another reader. */
export function accept<T>(read: Reading<T>): T {
  if (read.ok) return read.value;
  throw new Refused(keysOf(read.refusal.place), read.refusal.found, read.refusal.expected);
}

const keysOf = (place: string): Key[] =>
  place
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
