import type { ShareLink } from '../document/rig.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { orient } from '../geometry/orient.ts';
import { plainTwist } from '../geometry/plainTwist.ts';
import { FRAME_INTS, writeRestFrame } from '../geometry/restFrame.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { turnAboutZ } from '../geometry/turnAbout.ts';
import { TWIST_LEAST, writeTwist } from '../geometry/twist.ts';
import { FLAT, TWIST_UNDEFINED } from '../machine/flagBits.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { LINK_RECORD, type LinkKind } from './linkKind.ts';

const { LINK, WEIGHT } = LINK_RECORD;
const SOURCE = LINK_RECORD.INTS;
const SOURCE_FRAME = SOURCE + 1;
const FRACTION = SOURCE_FRAME + FRAME_INTS;
const INTS = FRACTION + 1;

/** Scratch. */
const OWN = 0;
const SIZE = 9;
const FRAME = 12;
const FROM = 21;
const TO = 30;
const TWIST = 39;

const Z = 2;

const run: Run = (machine, at, count) => {
  const end = at + INTS * count;
  const { code, memory: m } = machine;
  for (let i = at; i < end; i += INTS) {
    const weight = m[code[i + WEIGHT]];
    if (weight === 0) continue;
    const self = code[i];
    const twistRad = plainTwist(code, m, i + SOURCE_FRAME, code[i + SOURCE], Z);
    if (Number.isNaN(twistRad) || !isTurn(m, self)) shareOne(machine, i, weight);
    else turnAboutZ(m, self, weight * m[code[i + FRACTION]] * twistRad);
  }
  return end;
};

export const share: LinkKind<ShareLink> = {
  reads: (link) => [link.source],
  code({ source, fraction }, own, places) {
    return [places.world(source), ...places.frame(source), places.fraction(own.link, fraction)];
  },
  runs: [run],
  singular: () => ['half-twist'],
  nearness: (machine, at) => (writeSourceTwist(machine, at) ? Math.PI - Math.abs(machine.memory[TWIST]) : 0),
};

function shareOne(machine: Machine, at: number, weight: number): void {
  const { code, memory: m, flags } = machine;
  const self = code[at];
  const link = code[at + LINK];
  const isDefined = writeSourceTwist(machine, at);
  if (!isDefined) flags[link] |= TWIST_UNDEFINED;
  const angleRad = isDefined ? weight * m[code[at + FRACTION]] * m[TWIST] : 0;
  if (isTurn(m, self)) {
    turnAboutZ(m, self, angleRad);
    return;
  }
  takeApart(m, flags, self, OWN, link);
  turnAboutZ(m, OWN, angleRad);
  putTogether(m, OWN, SIZE, self);
}

/** Writes the twist of the source from its rest frame under its parent. `flat` is for that frame, which is divided by. */
function writeSourceTwist({ code, memory: m, flags }: Machine, at: number): boolean {
  const source = code[at + SOURCE];
  writeRestFrame(code, m, at + SOURCE_FRAME, FRAME, TWIST);
  const isFrameTurn = isTurn(m, FRAME);
  if (!isFrameTurn && orient(m, FRAME, FROM)) flags[code[at + LINK]] |= FLAT;
  const isSourceTurn = isTurn(m, source);
  if (!isSourceTurn) orient(m, source, TO);
  return writeTwist(m, isFrameTurn ? FRAME : FROM, isSourceTurn ? source : TO, Z, TWIST_LEAST, TWIST);
}
