import type { SpanLink } from '../document/rig.ts';
import { aimShortest } from '../geometry/aimShortest.ts';
import { blend } from '../geometry/blend.ts';
import { POINT_INTS, writeDirection } from '../geometry/point.ts';
import { FRAME_INTS, frameSize } from '../geometry/restFrame.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { set, ZERO } from '../geometry/vector.ts';
import { AIM_UNDEFINED, FLAT } from '../machine/flagBits.ts';
import { DIRECTION, GOAL_SIZE, ORIENTATION, SIZE } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { angleFromOpposite, distanceToTarget } from './aimNearness.ts';
import { spareAxis } from './axes.ts';
import { eachRecord, LINK, LINK_INTS, type LinkKind, WEIGHT } from './linkKind.ts';

const TARGET = LINK_INTS;
const FRAME = TARGET + POINT_INTS;
/** Five constants: rest length, bone's length, least, most, volume kept (1) or not (0). Then +z and its spare axis. */
const LENGTHS = FRAME + FRAME_INTS;
const AXIS = LENGTHS + 1;
const SPARE = AXIS + 1;
const INTS = SPARE + 1;

const Z = [0, 0, 1] as const;

export const span: LinkKind<SpanLink> = {
  reads: (link) => [link.target.bone],
  code({ target, sides, restLength, least = 0, most = Infinity }, own, places) {
    const bone = places.boneAt(own.bone);
    const { length } = bone.rest;
    const lengths = places.constant(restLength ?? length, length, least, most, sides === 'volume' ? 1 : 0);
    const vectors = [places.constant(...Z), places.constant(...spareAxis(Z))];
    return [...places.point(target), ...places.frame(bone.name), lengths, ...vectors];
  },
  run: eachRecord(INTS, spanOne),
  singular: () => ['target-at-base', 'opposite'],
  nearness(machine, at, place) {
    const self = machine.code[at];
    if (place === 'opposite') return angleFromOpposite(machine, self, at + TARGET, machine.code[at + AXIS]);
    return distanceToTarget(machine, self, at + TARGET);
  },
};

function spanOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const self = code[at];
  const link = code[at + LINK];
  const distance = writeDirection(code, m, self, at + TARGET, DIRECTION);
  const unitSize = frameSize(code, m, at + FRAME);
  if (distance < ZERO) flags[link] |= AIM_UNDEFINED;
  if (unitSize < ZERO) flags[link] |= FLAT;
  if (distance < ZERO || unitSize < ZERO) return;
  takeApart(machine, self, ORIENTATION, SIZE, link);
  aimShortest(m, code[at + AXIS], code[at + SPARE], weight);
  writeSize(m, code[at + LENGTHS], distance, unitSize);
  blend(m, SIZE, GOAL_SIZE, weight);
  putTogether(m, ORIENTATION, SIZE, self);
}

/** The size at full weight: along z by the bounded ratio of distance to rest length, across by what `sides` says. */
function writeSize(m: Float64Array, lengths: number, distance: number, unitSize: number): void {
  const restLength = m[lengths];
  const ratio = Math.min(m[lengths + 3], Math.max(m[lengths + 2], distance / (restLength * unitSize)));
  const across = m[lengths + 4] === 1 ? unitSize / Math.sqrt(ratio) : unitSize;
  set(m, GOAL_SIZE, across, across, (unitSize * ratio * restLength) / m[lengths + 1]);
}
