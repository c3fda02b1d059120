import { matrixOf, relative } from '../compile/restTransforms.ts';
import type { FollowLink } from '../document/rig.ts';
import { blend } from '../geometry/blend.ts';
import { multiply, transformPoint } from '../geometry/matrix.ts';
import { slerp } from '../geometry/slerp.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import { GOAL, GOAL_ORIENTATION, GOAL_SIZE, ORIENTATION, SIZE } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { eachRecord, LINK, LINK_INTS, type LinkKind, WEIGHT } from './linkKind.ts';

const SOURCE = LINK_INTS;
/** Where source⁻¹·self at rest lies, three columns and base; NONE without offset. */
const OFFSET = SOURCE + 1;
const CHANNELS = SOURCE + 2;
const INTS = SOURCE + 3;
const NONE = -1;
const MOVE = 1;
const TURN = 2;
const SIZES = 4;

const ALL = ['move', 'turn', 'size'] as const;
const BITS = { move: MOVE, turn: TURN, size: SIZES };

export const follow: LinkKind<FollowLink> = {
  reads: (link) => [link.source],
  code({ source, channels = ALL, offset }, own, places) {
    // A bone on its parent's tip has its base put back after the link, so its move is left out instead.
    const onTip = places.boneAt(own.bone).attach === 'tip';
    const bits = channels.filter((channel) => !(onTip && channel === 'move')).map((channel) => BITS[channel]);
    const { base, turn } = relative(places.rests[places.bone(source)], places.rests[own.bone]);
    const kept = offset === 'keep' ? places.constant(...matrixOf(turn), ...base) : NONE;
    return [places.world(source), kept, bits.reduce((sum, bit) => sum + bit, 0)];
  },
  run: eachRecord(INTS, followOne),
  singular: () => [],
  nearness: () => Infinity,
};

function followOne(machine: Machine, at: number): void {
  const { code, memory: m } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const self = code[at];
  const channels = code[at + CHANNELS];
  const goal = writeGoal(machine, at);
  takeApart(machine, self, ORIENTATION, SIZE, code[at + LINK]);
  takeApart(machine, goal, GOAL_ORIENTATION, GOAL_SIZE, code[at + LINK]);
  if (channels & MOVE) blend(m, self + 9, goal + 9, weight);
  if (channels & TURN) slerp(m, ORIENTATION, GOAL_ORIENTATION, weight);
  if (channels & SIZES) blend(m, SIZE, GOAL_SIZE, weight);
  putTogether(m, ORIENTATION, SIZE, self);
}

/** Where the goal's transform lies: the source's own world, or that with the offset at rest. */
function writeGoal({ code, memory: m }: Machine, at: number): number {
  const source = code[at + SOURCE];
  const offset = code[at + OFFSET];
  if (offset === NONE) return source;
  multiply(m, source, offset, GOAL);
  transformPoint(m, source, offset + 9, GOAL + 9);
  return GOAL;
}
