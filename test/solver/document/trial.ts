import { expect } from 'vitest';
import type { Reading, Refusal } from '../../../src/solver/index.ts';
import { readRig } from '../../../src/solver/index.ts';

const HALF = Math.SQRT1_2;
const UP = [-HALF, 0, 0, HALF];

/** A quay with a vane, a crane and a rib: every kind of link, every input and output, and a mesh. Plain JSON. */
export const quay = {
  format: 'counterpose/rig',
  version: 1,
  title: 'Quay',
  bones: [
    {
      name: 'kite',
      parent: null,
      role: 'control',
      rest: { base: [0, 1.5, 0.6], turn: [0, 0, 0, 1], length: 0.05 },
      turnOrder: 'zxy',
      locks: { turn: [true, true, true] },
      switches: [
        { name: 'together', min: 0, max: 1, default: 0, sliding: true },
        { name: 'lamp', min: 0, max: 1, default: 1 },
      ],
    },
    { name: 'post', parent: null, role: 'skin', rest: { base: [0, 0, 0], turn: UP, length: 1.5 } },
    {
      name: 'vane',
      parent: 'post',
      role: 'helper',
      rest: { base: [0, 1.5, 0], turn: [0, 0, 0, 1], length: 0.1 },
      attach: 'tip',
      inherits: 'turn',
      links: [
        {
          name: 'watch',
          kind: 'aim',
          target: { bone: 'kite', at: 0.5 },
          axis: '+z',
          up: { axis: '+y', toward: { direction: [0, 2, 0] } },
          weight: 1,
        },
        { name: 'keep', kind: 'limit', yaw: [-90, 90], pitch: [-45, 45], twist: [0, 0], cone: 80 },
        { name: 'half', kind: 'share', source: 'kite', fraction: 0.5 },
      ],
    },
    {
      name: 'boom',
      parent: 'post',
      role: 'helper',
      rest: { base: [0.5, 1, 0], turn: [0, 0, 0, 1], length: 0.4 },
      links: [
        { name: 'ride', kind: 'follow', source: 'post', channels: ['move', 'turn'], offset: 'keep', weight: 0.5 },
        { name: 'slide', kind: 'limit', move: { min: [-1, 0, 0], max: [1, 0, 0] } },
      ],
    },
    {
      name: 'jib',
      parent: 'boom',
      role: 'skin',
      rest: { base: [0.5, 1, 0.4], turn: [0, 0, 0, 1], length: 0.3 },
      links: [{ name: 'fetch', kind: 'reach', target: { bone: 'kite' }, pole: { bone: 'post', at: 1 } }],
    },
    {
      name: 'gauge',
      parent: null,
      role: 'guide',
      rest: { base: [0, 1, 0], turn: [0, 0, 0, 1], length: 0.2 },
      links: [
        {
          name: 'stretch',
          kind: 'span',
          target: { bone: 'kite' },
          sides: 'volume',
          restLength: 1,
          least: 0.5,
          most: 2,
        },
      ],
    },
  ],
  drivers: [
    {
      name: 'let_go',
      inputs: [{ from: { switch: 'kite.together' }, times: 2 }, { from: { turn: { bone: 'kite', axis: 'z' } } }],
      map: {
        keys: [
          [0, 1],
          [1, 0],
        ],
        shape: 'straight',
        beyond: 'hold',
      },
      output: { bone: 'vane', link: 'watch', field: 'weight' },
    },
    {
      name: 'lift',
      inputs: [
        { from: { gap: [{ bone: 'post' }, { bone: 'kite', at: 1 }] } },
        { from: { shift: { bone: 'kite', axis: 'x' } } },
      ],
      map: {
        keys: [
          [0, 0],
          [1, 0.2],
          [2, 1],
        ],
        shape: { bezier: [0.2, -1, 0.8, 2] },
        beyond: 'extend',
      },
      output: { bone: 'boom', channel: 'move.y' },
    },
    {
      name: 'light',
      inputs: [{ from: { switch: 'kite.together' } }],
      map: {
        keys: [
          [0, 0],
          [1, 1],
        ],
      },
      output: { switch: 'kite.lamp' },
    },
  ],
  mesh: { positions: [0, 0, 0, 1, 0, 0, 0, 1, 0], triangles: [0, 1, 2], skinning: 'dual' },
};

/** A change: where (JSON Pointer), and what stands there then; undefined for nothing. */
export type Change = readonly [place: string, value: unknown];

/** The document with the changes made, one after another. */
export function changed(document: unknown, ...changes: readonly Change[]): unknown {
  const root = { root: structuredClone(document) };
  for (const [place, value] of changes) {
    const keys = `/root${place}`.split('/').slice(1);
    const last = keys.pop()!;
    const owner = keys.reduce<Record<string, unknown>>((at, key) => at[key] as Record<string, unknown>, root);
    if (value === undefined && !Array.isArray(owner)) delete owner[last];
    else if (value === undefined) (owner as unknown as unknown[]).splice(Number(last), 1);
    else owner[last] = value;
  }
  return root.root;
}

/** Links and drivers of `quay` by name, as places. */
export const WATCH = '/bones/2/links/0';
export const KEEP = '/bones/2/links/1';
export const HALF_TWIST = '/bones/2/links/2';
export const RIDE = '/bones/3/links/0';
export const SLIDE = '/bones/3/links/1';
export const FETCH = '/bones/4/links/0';
export const STRETCH = '/bones/5/links/0';

export function mustRead<T>(reading: Reading<T>): T {
  if (!reading.ok) throw new Error(`refused: ${JSON.stringify(reading.refusal)}`);
  return reading.value;
}

export function refusal(reading: Reading<unknown>): Refusal {
  if (reading.ok) throw new Error('not refused');
  return reading.refusal;
}

/** One rule: what passes (often at its very edge), what does not, and what is said then. */
export interface Rule {
  rule: string;
  passes?: readonly Change[];
  refused: readonly Change[];
  place: string;
  found: RegExp;
  expected: RegExp;
}

export function expectRule({ passes, refused, place, found, expected }: Rule): void {
  if (passes) mustRead(readRig(changed(quay, ...passes)));
  const said = refusal(readRig(changed(quay, ...refused)));
  expect(said.place).toBe(place);
  expect(said.found).toMatch(found);
  expect(said.expected).toMatch(expected);
}
