import { matrixOf, relative } from '../compile/restTransforms.ts';
import type { FollowLink, Quat } from '../document/rig.ts';
import { blend } from '../geometry/blend.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { multiply, transformPoint } from '../geometry/matrix.ts';
import { slerp } from '../geometry/slerp.ts';
import { putTogether, takeApart } from '../geometry/takeApart.ts';
import type { Machine, Run } from '../machine/machine.ts';
import { followTurn } from './followTurn.ts';
import { LINK_RECORD, type LinkKind } from './linkKind.ts';

const { LINK, WEIGHT } = LINK_RECORD;
const SOURCE = LINK_RECORD.INTS;
/** Where source⁻¹·self at rest lies, three columns and base; NONE without offset, or one that does nothing. */
const OFFSET = SOURCE + 1;
const CHANNELS = SOURCE + 2;
const INTS = SOURCE + 3;
const NONE = -1;
const BITS = { move: 1, turn: 2, size: 4 };

/** Scratch. */
const OWN = 0;
const SIZE = 9;
const GOAL = 12;
const GOAL_PARTS = 24;
const SPARE = 36;

const run: Run = (machine, at, count) => {
  const end = at + INTS * count;
  for (let i = at; i < end; i += INTS) followOne(machine, i);
  return end;
};

export const follow: LinkKind<FollowLink> = {
  reads: (link) => [link.source],
  code({ source, channels = ['move', 'turn', 'size'], offset }, own, places) {
    // A bone on its parent's tip has its base put back after the link, so its move is left out instead.
    const onTip = places.boneAt(own.bone).attach === 'tip';
    const bits = channels.filter((channel) => !(onTip && channel === 'move')).map((channel) => BITS[channel]);
    const { base, turn } = relative(places.rests[places.bone(source)], places.rests[own.bone]);
    const isNothing = isUnturned(turn) && (!bits.includes(BITS.move) || base.every((part) => part === 0));
    const kept = offset === 'keep' && !isNothing ? places.constant(...matrixOf(turn), ...base) : NONE;
    return [places.world(source), kept, bits.reduce((sum, bit) => sum + bit, 0)];
  },
  runs: [run],
  singular: () => [],
  nearness: () => Infinity,
};

const isUnturned = ([x, y, z]: Quat): boolean => x === 0 && y === 0 && z === 0;

function followOne(machine: Machine, at: number): void {
  const { code, memory: m, flags } = machine;
  const weight = m[code[at + WEIGHT]];
  if (weight === 0) return;
  const self = code[at];
  const channels = code[at + CHANNELS];
  if (channels === BITS.turn && weight === 1 && followTurn(code, m, at)) return;
  const goal = writeGoal(code, m, at);
  if (channels & BITS.move) blend(m, self + 9, goal + 9, weight);
  if (isTurn(m, self) && isTurn(m, goal)) {
    if (channels & BITS.turn) slerp(m, self, goal, weight, SPARE);
    return;
  }
  takeApart(m, flags, self, OWN, code[at + LINK]);
  takeApart(m, flags, goal, GOAL_PARTS, code[at + LINK]);
  if (channels & BITS.turn) slerp(m, OWN, GOAL_PARTS, weight, SPARE);
  if (channels & BITS.size) blend(m, OWN + SIZE, GOAL_PARTS + SIZE, weight);
  putTogether(m, OWN, OWN + SIZE, self);
}

/** Where the goal's transform lies: the source's own world, or that with the offset at rest. */
function writeGoal(code: Int32Array, m: Float64Array, at: number): number {
  const source = code[at + SOURCE];
  const offset = code[at + OFFSET];
  if (offset === NONE) return source;
  multiply(m, source, offset, GOAL);
  transformPoint(m, source, offset + 9, GOAL + 9);
  return GOAL;
}
