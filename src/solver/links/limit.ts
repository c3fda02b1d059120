import type { LimitLink } from '../document/rig.ts';
import { FRAME_INTS, writeRestFrame } from '../geometry/restFrame.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { ORIENTATION, SIZE } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { limitMove, moveConstants } from './limitMove.ts';
import { angleFromHalfTurn, limitTurn, turnConstants } from './limitTurn.ts';
import { eachRecord, LINK, LINK_INTS, type LinkKind, WEIGHT } from './linkKind.ts';

const FRAME = LINK_INTS;
/** Where the bounds of move and of turn lie; NONE if there are none. */
const MOVE = FRAME + FRAME_INTS;
const TURN = MOVE + 1;
const INTS = TURN + 1;
const NONE = -1;

const boundsTurn = ({ yaw, pitch, twist, cone }: LimitLink): boolean =>
  Boolean(yaw || pitch || twist) || cone !== undefined;

export const limit: LinkKind<LimitLink> = {
  reads: () => [],
  code(link, own, places) {
    const move = link.move ? places.constant(...moveConstants(link.move)) : NONE;
    const turn = boundsTurn(link) ? places.constant(...turnConstants(link)) : NONE;
    return [...places.frame(places.boneAt(own.bone).name), move, turn];
  },
  run: eachRecord(INTS, limitOne),
  singular: (link) => (boundsTurn(link) ? ['half-twist'] : []),
  nearness: (machine, at) => angleFromHalfTurn(machine, machine.code[at], at + FRAME),
};

function limitOne(machine: Machine, at: number): void {
  const { code, memory: m } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const self = code[at];
  takeApart(machine, self, ORIENTATION, SIZE, code[at + LINK]);
  writeRestFrame(code, m, at + FRAME);
  if (code[at + MOVE] !== NONE) limitMove(machine, at, at + FRAME, code[at + MOVE], weight);
  if (code[at + TURN] !== NONE) limitTurn(machine, code[at + LINK], code[at + TURN], weight);
  putTogether(m, ORIENTATION, SIZE, self);
}
