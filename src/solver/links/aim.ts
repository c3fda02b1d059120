import type { AimLink } from '../document/rig.ts';
import { aimShortest } from '../geometry/aimShortest.ts';
import { POINT_INTS, writeDirection } from '../geometry/point.ts';
import { slerp } from '../geometry/slerp.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { ZERO } from '../geometry/vector.ts';
import { AIM_UNDEFINED, UP_UNDEFINED } from '../machine/flagBits.ts';
import { DIRECTION, FULL, ORIENTATION, SIZE } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { angleFromOpposite, distanceToTarget } from './aimNearness.ts';
import { axisVector, spareAxis } from './axes.ts';
import { eachRecord, LINK, LINK_INTS, type LinkKind, WEIGHT } from './linkKind.ts';
import { hasUp, UP_INTS, upCode, upReads, upSine, writeRolled } from './upVector.ts';

const TARGET = LINK_INTS;
const AXIS = TARGET + POINT_INTS;
/** The axis of the half-turn that is taken when the target is straight behind. */
const SPARE = AXIS + 1;
const UP = AXIS + 2;
const INTS = UP + UP_INTS;

export const aim: LinkKind<AimLink> = {
  reads: (link) => [link.target.bone, ...upReads(link.up)],
  code(link, _own, places) {
    const axis = axisVector(link.axis ?? '+z');
    const vectors = [places.constant(...axis), places.constant(...spareAxis(axis))];
    return [...places.point(link.target), ...vectors, ...upCode(link.up, axis, places)];
  },
  run: eachRecord(INTS, aimOne),
  singular: (link) => (link.up ? ['target-at-base', 'opposite', 'up-along-aim'] : ['target-at-base', 'opposite']),
  nearness(machine, at, place) {
    const self = machine.code[at];
    if (place === 'opposite') return angleFromOpposite(machine, self, at + TARGET, machine.code[at + AXIS]);
    const distance = distanceToTarget(machine, self, at + TARGET);
    if (place === 'target-at-base') return distance;
    return distance < ZERO ? 1 : upSine(machine, self, at + UP);
  },
};

function aimOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const self = code[at];
  const link = code[at + LINK];
  if (writeDirection(code, m, self, at + TARGET, DIRECTION) < ZERO) {
    flags[link] |= AIM_UNDEFINED;
    return;
  }
  takeApart(machine, self, ORIENTATION, SIZE, link);
  turnToTarget(machine, at, weight);
  putTogether(m, ORIENTATION, SIZE, self);
}

function turnToTarget(machine: Machine, at: number, weight: number): void {
  const { code, memory: m, flags } = machine;
  if (hasUp(code, at + UP)) {
    if (writeRolled(machine, code[at], at + UP)) {
      slerp(m, ORIENTATION, FULL, weight);
      return;
    }
    flags[code[at + LINK]] |= UP_UNDEFINED;
  }
  aimShortest(m, code[at + AXIS], code[at + SPARE], weight);
}
