import { aimShortest } from '../geometry/aimShortest.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { writeDirection } from '../geometry/point.ts';
import { slerp } from '../geometry/slerp.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { AIM_UNDEFINED, UP_UNDEFINED } from '../machine/flagBits.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { AIM_RECORD } from './aimRecord.ts';
import { LINK_RECORD } from './linkKind.ts';
import { hasUp, writeRolled } from './upVector.ts';

const { LINK, WEIGHT } = LINK_RECORD;
const { TARGET, AXIS, HALF, UP, INTS } = AIM_RECORD;

/** Scratch. */
const OWN = 0;
const SIZE = 9;
const DIRECTION = 12;
const FULL = 16;
const SPARE = 25;

/** Aims with any axis, with or without an up vector. */
export const aimAny: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) aimOne(machine, i);
  return end;
};

export function aimOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const self = code[at];
  const link = code[at + LINK];
  if (!writeDirection(code, m, self, at + TARGET, DIRECTION)) {
    flags[link] |= AIM_UNDEFINED;
    return;
  }
  if (isTurn(m, self)) {
    turnToTarget(machine, at, self, weight);
    return;
  }
  takeApart(m, flags, self, OWN, link);
  turnToTarget(machine, at, OWN, weight);
  putTogether(m, OWN, SIZE, self);
}

function turnToTarget({ code, memory: m, flags }: Machine, at: number, own: number, weight: number): void {
  if (hasUp(code, at + UP)) {
    if (writeRolled(code, m, code[at], at + UP, DIRECTION, FULL, SPARE)) {
      slerp(m, own, FULL, weight, SPARE);
      return;
    }
    flags[code[at + LINK]] |= UP_UNDEFINED;
  }
  aimShortest(m, own, code[at + AXIS], code[at + HALF], DIRECTION, weight, SPARE);
}
