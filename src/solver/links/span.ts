import type { SpanLink } from '../document/rig.ts';
import { aimShortest } from '../geometry/aimShortest.ts';
import { blend } from '../geometry/blend.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { POINT_INTS, writeDirection } from '../geometry/point.ts';
import { FRAME_INTS, frameSize } from '../geometry/restFrame.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { set } from '../geometry/vector.ts';
import { AIM_UNDEFINED, FLAT } from '../machine/flagBits.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { angleFromOpposite, distanceToTarget } from './aimNearness.ts';
import { spareAxis } from './axes.ts';
import { LINK_RECORD, type LinkKind } from './linkKind.ts';
import { spanPlain } from './spanPlain.ts';

const { LINK, WEIGHT } = LINK_RECORD;
const TARGET = LINK_RECORD.INTS;
const FRAME = TARGET + POINT_INTS;
/** Five constants: rest length, bone's length, least, most, volume kept (1) or not (0). Then +z and its spare axis. */
const LENGTHS = FRAME + FRAME_INTS;
const AXIS = LENGTHS + 1;
const HALF = AXIS + 1;
const INTS = HALF + 1;

/** Scratch. */
const OWN = 0;
const SIZE = 9;
const DIRECTION = 12;
const FULL_SIZE = 16;
const SPARE = 19;

const Z = [0, 0, 1] as const;
/** Under this, ∛|det F| counts as zero. */
const ZERO = 1e-9;

const run: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) spanOne(machine, i);
  return end;
};

export const span: LinkKind<SpanLink> = {
  reads: (link) => [link.target.bone],
  code({ target, sides, restLength, least = 0, most = Infinity }, own, places) {
    const bone = places.boneAt(own.bone);
    const { length } = bone.rest;
    const lengths = places.constant(restLength ?? length, length, least, most, sides === 'volume' ? 1 : 0);
    const vectors = [places.constant(...Z), places.constant(...spareAxis(Z))];
    return [...places.point(target), ...places.frame(bone.name), lengths, ...vectors];
  },
  runs: [run],
  singular: () => ['target-at-base', 'opposite'],
  nearness({ code, memory: m }, at, place) {
    if (place === 'opposite') return angleFromOpposite(code, m, code[at], at + TARGET, code[at + AXIS]);
    return distanceToTarget(code, m, code[at], at + TARGET);
  },
};

function spanOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0 || (weight === 1 && spanPlain(code, m, at))) return;
  const self = code[at];
  const link = code[at + LINK];
  const isAway = writeDirection(code, m, self, at + TARGET, DIRECTION);
  const unitSize = frameSize(code, m, at + FRAME);
  if (!isAway) flags[link] |= AIM_UNDEFINED;
  if (unitSize < ZERO) flags[link] |= FLAT;
  if (!isAway || unitSize < ZERO) return;
  const own = isTurn(m, self) ? self : OWN;
  if (own === self) set(m, SIZE, 1, 1, 1);
  else takeApart(m, flags, self, OWN, link);
  aimShortest(m, own, code[at + AXIS], code[at + HALF], DIRECTION, weight, SPARE);
  writeSize(m, code[at + LENGTHS], unitSize);
  blend(m, SIZE, FULL_SIZE, weight);
  putTogether(m, own, SIZE, self);
}

/** The size at full weight: along z by the bounded ratio of distance to rest length, across by what `sides` says. */
function writeSize(m: Float64Array, lengths: number, unitSize: number): void {
  const restLength = m[lengths];
  const distance = m[DIRECTION + 3];
  const ratio = Math.min(m[lengths + 3], Math.max(m[lengths + 2], distance / (restLength * unitSize)));
  const across = m[lengths + 4] === 1 ? unitSize / Math.sqrt(ratio) : unitSize;
  set(m, FULL_SIZE, across, across, (unitSize * ratio * restLength) / m[lengths + 1]);
}
