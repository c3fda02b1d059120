import type { ShareLink } from '../document/rig.ts';
import { multiplyTransposed } from '../geometry/matrix.ts';
import { orient } from '../geometry/orient.ts';
import { FRAME_INTS, writeRestFrame } from '../geometry/restFrame.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { turnAboutZ } from '../geometry/turnAboutZ.ts';
import { TWIST_LEAST, twistRad } from '../geometry/twist.ts';
import { FLAT, TWIST_UNDEFINED } from '../machine/flagBits.ts';
import { FRAME, FRAME_ORIENTATION, GOAL_ORIENTATION, ORIENTATION, SIZE, TURN } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { eachRecord, LINK, LINK_INTS, type LinkKind, WEIGHT } from './linkKind.ts';

const SOURCE = LINK_INTS;
const SOURCE_FRAME = SOURCE + 1;
const FRACTION = SOURCE_FRAME + FRAME_INTS;
const INTS = FRACTION + 1;

const Z = 2;

export const share: LinkKind<ShareLink> = {
  reads: (link) => [link.source],
  code({ source, fraction }, own, places) {
    return [places.world(source), ...places.frame(source), places.fraction(own.link, fraction)];
  },
  run: eachRecord(INTS, shareOne),
  singular: () => ['half-twist'],
  nearness(machine, at) {
    const angleRad = sourceTwistRad(machine, at);
    return Number.isNaN(angleRad) ? 0 : Math.PI - Math.abs(angleRad);
  },
};

function shareOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const link = code[at + LINK];
  const angleRad = sourceTwistRad(machine, at);
  takeApart(machine, code[at], ORIENTATION, SIZE, link);
  if (Number.isNaN(angleRad)) flags[link] |= TWIST_UNDEFINED;
  else turnAboutZ(m, ORIENTATION, weight * m[code[at + FRACTION]] * angleRad);
  putTogether(m, ORIENTATION, SIZE, code[at]);
}

/** Twist of the source from its rest frame under its parent; NaN if undefined. `flat` is for that frame, which is divided by. */
function sourceTwistRad({ code, memory: m, flags }: Machine, at: number): number {
  writeRestFrame(code, m, at + SOURCE_FRAME);
  if (orient(m, FRAME, FRAME_ORIENTATION)) flags[code[at + LINK]] |= FLAT;
  orient(m, code[at + SOURCE], GOAL_ORIENTATION);
  multiplyTransposed(m, FRAME_ORIENTATION, GOAL_ORIENTATION, TURN);
  return twistRad(m, TURN, Z, TWIST_LEAST);
}
