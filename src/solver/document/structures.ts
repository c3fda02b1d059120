/** Readers of objects and lists. An own field whose value is undefined is not there, as it would not be in JSON. */
import { nearest } from './nearest.ts';
import { type Key, type Reader, readAt, readItems, refuse, refuseValue } from './reader.ts';
import { listed, quoted } from './words.ts';

export interface Needed<T, K = unknown> {
  readonly needed: true;
  readonly read: Reader<T, K>;
}
export interface Optional<T, K = unknown> {
  readonly needed: false;
  readonly read: Reader<T, K>;
}
/** One entry per field of T: `optional` where T's field may be absent, `needed` where it may not. */
export type Fields<T, K = unknown> = {
  readonly [P in keyof T]-?: Record<never, never> extends Pick<T, P>
    ? Optional<Exclude<T[P], undefined>, K>
    : Needed<T[P], K>;
};

export const needed = <T, K>(read: Reader<T, K>): Needed<T, K> => ({ needed: true, read });
export const optional = <T, K>(read: Reader<T, K>): Optional<T, K> => ({ needed: false, read });

type Open = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Open =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** An own field of any value; undefined where there is none. */
export const fieldOf = (value: unknown, name: string): unknown =>
  isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;

/** A key as a step of a place; a key longer than any name is left out, so that places stay readable. */
export const keyPath = (key: string): readonly Key[] => (key.length <= 64 ? [key] : []);

function refuseUnknown(key: string, noun: string, names: readonly string[]): never {
  const near = nearest(key, names);
  const fields = `${noun} has the fields ${listed(names, 'and')}`;
  return refuse(`an unknown field ${quoted(key)}`, near ? `${quoted(near)}, perhaps: ${fields}` : fields, keyPath(key));
}

/**
 * An object with these fields and no others. Unknown fields are refused first, then missing ones, then the others are
 * read in the document's order. `noun` says what it is: "a bone".
 */
export function record<T extends object, K = unknown>(noun: string, fields: Fields<NoInfer<T>, K>): Reader<T, K> {
  const entries = Object.entries<Needed<unknown, K> | Optional<unknown, K>>(fields);
  const byName = new Map(entries);
  const names = entries.map(([name]) => name);
  const needs = entries.filter(([, field]) => field.needed);
  const whole = `${noun}, an object with the fields ${listed(names, 'and')}`;
  return (value, known) => {
    if (!isObject(value)) return refuseValue(value, whole);
    const keys = Object.keys(value).filter((key) => value[key] !== undefined);
    for (const key of keys) if (!byName.has(key)) refuseUnknown(key, noun, names);
    for (const [name, { read }] of needs) if (fieldOf(value, name) === undefined) readAt(name, read, undefined, known);
    const out: Record<string, unknown> = {};
    for (const key of keys) out[key] = readAt(key, byName.get(key)!.read, value[key], known);
    return out as T;
  };
}

/** An object told from others by a field that only it has, such as `switch` or `gap`. */
export function shapes<T, K>(noun: string, byField: Readonly<Record<string, Reader<T, K>>>): Reader<T, K> {
  const choices = Object.entries(byField);
  return (value, known) => {
    const choice = choices.find(([name]) => fieldOf(value, name) !== undefined);
    return choice ? choice[1](value, known) : refuseValue(value, noun);
  };
}

export interface ListSize {
  least?: number;
  most?: number;
}

/** A list of `nouns`, each read by `item`. */
export function list<T, K = unknown>(
  nouns: string,
  item: Reader<T, K>,
  { least = 0, most = Number.POSITIVE_INFINITY }: ListSize = {},
): Reader<readonly T[], K> {
  return (value, known) => {
    if (!Array.isArray(value)) return refuseValue(value, `a list of ${nouns}`);
    if (value.length < least) return refuseValue(value, `a list of at least ${least} ${nouns}`);
    if (value.length > most) return refuse(`${value.length} ${nouns}`, `at most ${most} ${nouns}`);
    return readItems(value, item, known);
  };
}

/** An object whose keys are names: `of` gives the reader for a key, or refuses the key. Keys are no prototype's. */
export function dictionary<T, K = unknown>(
  noun: string,
  of: (key: string, known: K) => Reader<T, K>,
): Reader<Readonly<Record<string, T>>, K> {
  return (value, known) => {
    if (!isObject(value)) return refuseValue(value, noun);
    const out: Record<string, T> = Object.create(null);
    for (const key of Object.keys(value)) {
      if (value[key] !== undefined) out[key] = readAt(key, of(key, known), value[key], known);
    }
    return out;
  };
}

/** Refuses the second of two items with one name. */
export function refuseRepeats(items: readonly { name: string }[], owner: string): void {
  const seen = new Set<string>();
  for (const [i, { name }] of items.entries()) {
    if (seen.has(name)) refuse(`${quoted(name)} a second time`, `a name that no other ${owner} has`, [i, 'name']);
    seen.add(name);
  }
}
