import { chance, pick, type Random, whole } from '../../support/random.ts';

type Node = Record<string, unknown> | unknown[];

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Every place in a document that holds something: its owner and its key there. */
function placesIn(value: unknown): { owner: Node; key: string }[] {
  if (!isNode(value)) return [];
  return Object.keys(value).flatMap((key) => [
    { owner: value, key },
    ...placesIn((value as Record<string, unknown>)[key]),
  ]);
}

function nested(depth: number): unknown {
  let value: unknown = 'deep';
  for (let i = 0; i < depth; i++) value = i % 2 ? [value] : { at: value };
  return value;
}

const HOSTILE: readonly unknown[] = [
  null,
  true,
  '',
  0,
  -0,
  -1,
  0.5,
  1e-320,
  1e200,
  Number.MAX_VALUE,
  Infinity,
  -Infinity,
  Number.NaN,
  undefined,
  [],
  {},
  [[]],
  [0, 0, 0],
  [0, 0, 0, 0],
  [0, 0, 0, 1],
  [1, 2],
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'kite\u202e_thgir',
  '\u0000',
  '\ud800',
  'ключ',
  '🪁'.repeat(100),
  'a'.repeat(65),
  'a'.repeat(100_000),
  'kite.together',
  '../../etc',
  '~1/~0',
  new Array(300).fill(0),
  new Array(5),
  Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`k${i}`, i])),
  nested(100),
  JSON.parse('{"__proto__":{"name":"x"},"name":"y"}'),
  new Date(0),
  new Map(),
  () => 1,
];

/** A fresh copy each time, because mutations also change what earlier ones put in. */
function hostile(random: Random): unknown {
  const value = pick(random, HOSTILE);
  return isNode(value) ? structuredClone(value) : value;
}

const KEYS = [
  '__proto__',
  'constructor',
  'toString',
  'name',
  'at',
  'weight',
  '',
  ' ',
  '\u202e',
  'a'.repeat(5000),
  '0',
  '-1',
];

function setKey(owner: Node, key: string, value: unknown): void {
  Object.defineProperty(owner, key, { value, enumerable: true, writable: true, configurable: true });
}

function remove(owner: Node, key: string): void {
  if (Array.isArray(owner)) owner.splice(Number(key), 1);
  else delete owner[key];
}

const get = (owner: Node, key: string) => (owner as Record<string, unknown>)[key];

type Mutation = (random: Random, place: { owner: Node; key: string }, other: { owner: Node; key: string }) => void;

const MUTATIONS: readonly Mutation[] = [
  (_, { owner, key }) => remove(owner, key),
  (random, { owner, key }) => setKey(owner, key, hostile(random)),
  (random, { owner, key }) => setKey(owner, key, hostile(random)),
  (_, { owner, key }, other) => setKey(owner, key, copyOf(get(other.owner, other.key))),
  (random, { owner, key }) => {
    const value = get(owner, key);
    remove(owner, key);
    setKey(owner, Array.isArray(owner) ? key : pick(random, [`${key}s`, key.toUpperCase(), ...KEYS]), value);
  },
  (random, { owner }) =>
    setKey(owner, Array.isArray(owner) ? String(owner.length) : pick(random, KEYS), hostile(random)),
  (_, { owner, key }) => setKey(owner, key, [get(owner, key)]),
  (random, { owner, key }) => {
    const value = get(owner, key);
    if (typeof value === 'number') setKey(owner, key, value * pick(random, [-1, 0, 1 + 1e-7, 1 + 2e-6, 1e9, 1e300]));
    if (typeof value === 'string') setKey(owner, key, value + pick(random, ['_', 'x', '_left', ' ']));
    if (Array.isArray(value)) value.push(...value);
  },
];

function copyOf(value: unknown): unknown {
  return isNode(value) ? JSON.parse(JSON.stringify(value)) : value;
}

/** A copy of a JSON document with one to four things wrong with it, or none by luck. */
export function mutated(random: Random, document: unknown): unknown {
  const root = { root: copyOf(document) };
  const count = chance(random, 0.7) ? 1 : whole(random, 2, 4);
  for (let i = 0; i < count; i++) {
    const places = placesIn(root).slice(chance(random, 0.98) ? 1 : 0);
    if (places.length > 0) pick(random, MUTATIONS)(random, pick(random, places), pick(random, places));
  }
  return root.root;
}
