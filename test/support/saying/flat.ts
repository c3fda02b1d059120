import type { AimLink, Bone, Driver, Link, Rig } from '../../../src/solver/index.ts';
import { anglesOf } from '../../../src/workbench/pose/angles.ts';

/** Every value of a rig by where it stands, bones, links, switches and drivers by their names, defaults filled in. */
export type Flat = ReadonlyMap<string, unknown>;

export function flat(rig: Rig): Flat {
  const out = new Map<string, unknown>();
  const bones = Object.fromEntries(rig.bones.map((bone) => [bone.name, plainBone(bone, rig)]));
  const drivers = Object.fromEntries((rig.drivers ?? []).map((driver) => [driver.name, plainDriver(driver)]));
  lay(out, '', { bones, drivers });
  return out;
}

const FREE = [false, false, false];

function plainBone({ name: _name, links = [], switches = [], rest, locks = {}, ...own }: Bone, rig: Rig) {
  return {
    attach: 'free',
    inherits: 'all',
    turnOrder: 'xyz',
    ...own,
    rest: { base: rest.base, length: rest.length, angles: anglesOf(rest.turn, 'xyz') },
    locks: { move: FREE, turn: FREE, size: FREE, ...locks },
    switches: Object.fromEntries(switches.map(({ name, ...rest }) => [name, { sliding: false, ...rest }])),
    links: Object.fromEntries(links.map((link, order) => [link.name, { order, ...plainLink(link, rest.length, rig) }])),
  };
}

function plainLink({ name, ...link }: Link, length: number, { drivers = [] }: Rig) {
  const isDriven = (field: string) =>
    drivers.some(({ output }) => 'link' in output && output.link === name && output.field === field);
  // A driven number is overwritten before it is read, whatever stands there.
  const driven = { ...(isDriven('weight') ? { weight: 'driven' } : {}) };
  const plain = { weight: 1, ...link, ...driven };
  if (link.kind === 'aim') return { axis: '+z', ...plain, up: plainUp(link.up), target: plainPoint(link.target) };
  if (link.kind === 'span') {
    return { sides: 'free', restLength: length, ...plain, target: plainPoint(link.target) };
  }
  if (link.kind === 'reach') {
    return { ...plain, target: plainPoint(link.target), pole: link.pole ? plainPoint(link.pole) : 'none' };
  }
  if (link.kind !== 'follow') return plain;
  return { offset: 'none', ...plain, channels: (link.channels ?? ['move', 'turn', 'size']).toSorted().join() };
}

function plainUp(up: AimLink['up']) {
  if (!up) return 'none';
  const { axis, toward } = up;
  return { axis, toward: 'bone' in toward && !('axis' in toward) ? plainPoint(toward) : toward };
}

const plainPoint = <P extends object>(point: P) => ({ at: 0, ...point });

function plainDriver({ name: _name, inputs, map, output }: Driver) {
  return {
    inputs: inputs.map((input) => ({ times: 1, ...input })),
    map: { shape: 'straight', beyond: 'hold', ...map },
    output: JSON.stringify(output),
  };
}

function lay(out: Map<string, unknown>, path: string, value: unknown): void {
  if (value === null || typeof value !== 'object') {
    out.set(path, value);
    return;
  }
  for (const [key, inner] of Object.entries(value)) lay(out, `${path}/${key}`, inner);
}

/** How much is missing, too much or otherwise; what is otherwise is the least. */
export function difference(have: Flat, want: Flat): number {
  let sum = 0;
  for (const [path, value] of want)
    if (!have.has(path)) sum += 2;
    else if (!isSame(have.get(path), value)) sum += 1;
  for (const path of have.keys()) if (!want.has(path)) sum += 2;
  return sum;
}

/** The places that differ, for a message. */
export function differing(have: Flat, want: Flat): string[] {
  const paths = new Set([...have.keys(), ...want.keys()]);
  return [...paths]
    .filter((path) => !isSame(have.get(path), want.get(path)))
    .map((path) => `${path}: ${JSON.stringify(have.get(path))}, wanted ${JSON.stringify(want.get(path))}`);
}

const isSame = (a: unknown, b: unknown): boolean =>
  a === b || (typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b)));
