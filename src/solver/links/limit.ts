import type { LimitLink } from '../document/rig.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { FRAME_INTS, writeRestFrame } from '../geometry/restFrame.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { limitMove, moveConstants } from './limitMove.ts';
import { isPlainlyInside } from './limitPlain.ts';
import { angleFromHalfTurn, limitTurn, turnConstants } from './limitTurn.ts';
import { LINK_RECORD, type LinkKind } from './linkKind.ts';

const { LINK, WEIGHT } = LINK_RECORD;
const FRAME = LINK_RECORD.INTS;
/** Where the bounds of move and of turn lie; NONE if there are none. */
const MOVE = FRAME + FRAME_INTS;
const TURN = MOVE + 1;
const INTS = TURN + 1;
const NONE = -1;

/** Scratch. */
const OWN = 0;
const SIZE = 9;
const OWN_FRAME = 12;
const SPARE = 21;

const run: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) limitOne(machine, i);
  return end;
};

const boundsTurn = ({ yaw, pitch, twist, cone }: LimitLink): boolean =>
  Boolean(yaw || pitch || twist) || cone !== undefined;

export const limit: LinkKind<LimitLink> = {
  reads: () => [],
  code(link, own, places) {
    const move = link.move ? places.constant(...moveConstants(link.move)) : NONE;
    const turn = boundsTurn(link) ? places.constant(...turnConstants(link)) : NONE;
    return [...places.frame(places.boneAt(own.bone).name), move, turn];
  },
  runs: [run],
  singular: (link) => (boundsTurn(link) ? ['half-twist'] : []),
  nearness({ code, memory: m }, at) {
    writeRestFrame(code, m, at + FRAME, OWN_FRAME, SPARE);
    return angleFromHalfTurn(m, code[at], OWN_FRAME, SPARE);
  },
};

function limitOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0 || isPlainlyInside(code, m, at)) return;
  const self = code[at];
  const link = code[at + LINK];
  const own = isTurn(m, self) ? self : OWN;
  if (own !== self) takeApart(m, flags, self, OWN, link);
  writeRestFrame(code, m, at + FRAME, OWN_FRAME, SPARE);
  if (code[at + MOVE] !== NONE) limitMove(machine, at, at + FRAME, OWN_FRAME, code[at + MOVE], weight, SPARE);
  if (code[at + TURN] !== NONE) limitTurn(m, flags, link, own, OWN_FRAME, code[at + TURN], weight, SPARE);
  if (own !== self) putTogether(m, OWN, SIZE, self);
}
