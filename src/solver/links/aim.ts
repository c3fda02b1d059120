import type { AimLink } from '../document/rig.ts';
import { writeDirection } from '../geometry/point.ts';
import { aimAny } from './aimAny.ts';
import { angleFromOpposite, distanceToTarget } from './aimNearness.ts';
import { AIM_RECORD } from './aimRecord.ts';
import { aimZ } from './aimZ.ts';
import { aimZUpY } from './aimZUpY.ts';
import { axisVector, spareAxis } from './axes.ts';
import type { LinkKind } from './linkKind.ts';
import { upCode, upReads, upSine } from './upVector.ts';

const { TARGET, AXIS, UP } = AIM_RECORD;

/** Scratch. */
const DIRECTION = 0;
const SPARE = 4;

export const aim: LinkKind<AimLink> = {
  reads: (link) => [link.target.bone, ...upReads(link.up)],
  code(link, _own, places) {
    const axis = axisVector(link.axis ?? '+z');
    const vectors = [places.constant(...axis), places.constant(...spareAxis(axis))];
    return [...places.point(link.target), ...vectors, ...upCode(link.up, axis, places)];
  },
  runs: [aimAny, aimZ, aimZUpY],
  way({ axis = '+z', up }) {
    if (axis !== '+z') return 0;
    if (!up) return 1;
    return up.axis === '+y' ? 2 : 0;
  },
  singular: (link) => (link.up ? ['target-at-base', 'opposite', 'up-along-aim'] : ['target-at-base', 'opposite']),
  nearness({ code, memory: m }, at, place) {
    const self = code[at];
    if (place === 'opposite') return angleFromOpposite(code, m, self, at + TARGET, code[at + AXIS]);
    if (place === 'target-at-base') return distanceToTarget(code, m, self, at + TARGET);
    return writeDirection(code, m, self, at + TARGET, DIRECTION) ? upSine(code, m, self, at + UP, DIRECTION, SPARE) : 1;
  },
};
