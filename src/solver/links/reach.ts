import type { ReachLink } from '../document/rig.ts';
import { POINT_INTS, writeDirection } from '../geometry/point.ts';
import { POLE_UNDEFINED, REACH_UNDEFINED } from '../machine/flagBits.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { distanceToTarget } from './aimNearness.ts';
import { LIMB } from './limb.ts';
import { LINK_RECORD, type LinkKind } from './linkKind.ts';
import { reachPlain } from './reachPlain.ts';
import { poleSine, writeHinge, writeOwnSide, writePoleSide } from './reachSide.ts';
import { turnLimb } from './reachTurns.ts';

const { LINK, WEIGHT } = LINK_RECORD;
const PARENT = LINK_RECORD.INTS;
const LENGTH = PARENT + 1;
const TARGET = LENGTH + 1;
const HAS_POLE = TARGET + POINT_INTS;
const POLE = HAS_POLE + 1;
const INTS = POLE + POINT_INTS;

const { UPPER, LOWER, DIRECTION } = LIMB;
/** Lengths under this count as zero, metres. */
const ZERO = 1e-9;

const run: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) reachOne(machine, i);
  return end;
};

export const reach: LinkKind<ReachLink> = {
  reads: (link) => [link.target.bone, ...(link.pole ? [link.pole.bone] : [])],
  code({ target, pole }, own, places) {
    const lower = places.boneAt(own.bone);
    const ends = [places.parentWorld(own.bone), places.constant(lower.rest.length)];
    return [...ends, ...places.point(target), ...(pole ? [1, ...places.point(pole)] : [0, 0, 0])];
  },
  runs: [run],
  singular: (link) => ['target-at-base', 'full-stretch', ...(link.pole ? (['up-along-aim'] as const) : [])],
  nearness({ code, memory: m }, at, place) {
    const upper = code[at + PARENT];
    if (place === 'target-at-base') return distanceToTarget(code, m, upper, at + TARGET);
    const isAway = writeDirection(code, m, upper, at + TARGET, DIRECTION);
    if (place === 'up-along-aim') return isAway ? poleSine(code, m, upper, at + POLE) : 1;
    writeBones(code, m, at);
    return Math.abs(m[UPPER + 3] + m[LOWER + 3] - m[DIRECTION + 3]);
  },
};

function reachOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0 || (weight === 1 && reachPlain(code, m, at))) return;
  const upper = code[at + PARENT];
  const isAway = writeDirection(code, m, upper, at + TARGET, DIRECTION);
  if (!writeBones(code, m, at) || !isAway) {
    flags[code[at + LINK]] |= REACH_UNDEFINED;
    return;
  }
  writeHinge(m, upper);
  writeElbowSide(machine, at);
  turnLimb(m, upper, code[at], weight);
}

/** Returns false if either bone has no length. */
function writeBones(code: Int32Array, m: Float64Array, at: number): boolean {
  const self = code[at];
  const upper = code[at + PARENT];
  const length = m[code[at + LENGTH]];
  const isLong = writeWay(
    m,
    UPPER,
    m[self + 9] - m[upper + 9],
    m[self + 10] - m[upper + 10],
    m[self + 11] - m[upper + 11],
  );
  return writeWay(m, LOWER, m[self + 6] * length, m[self + 7] * length, m[self + 8] * length) && isLong;
}

function writeWay(m: Float64Array, to: number, x: number, y: number, z: number): boolean {
  const length = Math.sqrt(x * x + y * y + z * z);
  const scale = 1 / length;
  m[to] = x * scale;
  m[to + 1] = y * scale;
  m[to + 2] = z * scale;
  m[to + 3] = length;
  return length >= ZERO;
}

function writeElbowSide({ code, memory: m, flags }: Machine, at: number): void {
  if (code[at + HAS_POLE] === 1) {
    if (writePoleSide(code, m, code[at + PARENT], at + POLE)) return;
    flags[code[at + LINK]] |= POLE_UNDEFINED;
  }
  writeOwnSide(m);
}
