import type { ReachLink } from '../document/rig.ts';
import { POINT_INTS, writeDirection } from '../geometry/point.ts';
import { lengthOf, set, subtract, unitise, ZERO } from '../geometry/vector.ts';
import { POLE_UNDEFINED, REACH_UNDEFINED } from '../machine/flagBits.ts';
import { DIRECTION, LOWER, UPPER } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { distanceToTarget } from './aimNearness.ts';
import { eachRecord, LINK, LINK_INTS, type LinkKind, WEIGHT } from './linkKind.ts';
import { poleSine, writeHinge, writeOwnSide, writePoleSide } from './reachSide.ts';
import { turnBoth, writeTurns } from './reachTurns.ts';

const PARENT = LINK_INTS;
const LENGTH = PARENT + 1;
const TARGET = LENGTH + 1;
const HAS_POLE = TARGET + POINT_INTS;
const POLE = HAS_POLE + 1;
const INTS = POLE + POINT_INTS;

export const reach: LinkKind<ReachLink> = {
  reads: (link) => [link.target.bone, ...(link.pole ? [link.pole.bone] : [])],
  code({ target, pole }, own, places) {
    const lower = places.boneAt(own.bone);
    const ends = [places.parentWorld(own.bone), places.constant(lower.rest.length)];
    return [...ends, ...places.point(target), ...(pole ? [1, ...places.point(pole)] : [0, 0, 0])];
  },
  run: eachRecord(INTS, reachOne),
  singular: (link) => ['target-at-base', 'full-stretch', ...(link.pole ? (['up-along-aim'] as const) : [])],
  nearness(machine, at, place) {
    const { code, memory: m } = machine;
    const distance = distanceToTarget(machine, code[at + PARENT], at + TARGET);
    if (place === 'target-at-base') return distance;
    if (place === 'up-along-aim') return distance < ZERO ? 1 : poleSine(machine, code[at + PARENT], at + POLE);
    writeBones(machine, at);
    return Math.abs(lengthOf(m, UPPER) + lengthOf(m, LOWER) - distance);
  },
};

function reachOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const upper = code[at + PARENT];
  const distance = writeDirection(code, m, upper, at + TARGET, DIRECTION);
  writeBones(machine, at);
  const upperLength = unitise(m, UPPER, ZERO);
  const lowerLength = unitise(m, LOWER, ZERO);
  if (upperLength < ZERO || lowerLength < ZERO || distance < ZERO) {
    flags[code[at + LINK]] |= REACH_UNDEFINED;
    return;
  }
  writeHinge(m, upper);
  writeElbowSide(machine, at);
  writeTurns(m, upperLength, lowerLength, distance);
  turnBoth(m, upper, code[at], weight);
}

/** Writes the ways from base to base and from base to tip, metres, to UPPER and LOWER. */
function writeBones({ code, memory: m }: Machine, at: number): void {
  const self = code[at];
  const length = m[code[at + LENGTH]];
  subtract(m, self + 9, code[at + PARENT] + 9, UPPER);
  set(m, LOWER, m[self + 6] * length, m[self + 7] * length, m[self + 8] * length);
}

function writeElbowSide(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  if (code[at + HAS_POLE] === 1) {
    if (writePoleSide(machine, code[at + PARENT], at + POLE)) return;
    flags[code[at + LINK]] |= POLE_UNDEFINED;
  }
  writeOwnSide(m);
}
