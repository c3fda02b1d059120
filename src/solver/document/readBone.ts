import type { Known } from './known.ts';
import { type Reader, within } from './reader.ts';
import { checkLink, readLink } from './readLink.ts';
import { readSwitch } from './readSwitch.ts';
import { parent } from './references.ts';
import { type Bone, type Locks, type Rest, ROLES, type TurnOrder } from './rig.ts';
import { list, needed, optional, record, refuseRepeats } from './structures.ts';
import { boolean, lengthAbove0, name, oneOf, tuple } from './values.ts';
import { quaternion, vector } from './vectors.ts';

const MOST_LINKS = 64;
const TURN_ORDERS: readonly TurnOrder[] = ['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'];

const rest: Reader<Rest> = record('a rest', {
  base: needed(vector('a base [x, y, z], in metres')),
  turn: needed(quaternion),
  length: needed(lengthAbove0),
});

const threeLocks = optional(tuple<readonly [boolean, boolean, boolean]>(3, 'locks of x, y and z', boolean));

const locks: Reader<Locks> = record('locks', { move: threeLocks, turn: threeLocks, size: threeLocks });

const readFields = record<Bone, Known>('a bone', {
  name: needed(name),
  parent: needed(parent),
  role: needed(oneOf(ROLES)),
  rest: needed(rest),
  attach: optional(oneOf(['free', 'tip'])),
  inherits: optional(oneOf(['all', 'uniform', 'turn'])),
  turnOrder: optional(oneOf(TURN_ORDERS)),
  locks: optional(locks),
  switches: optional(list('switches', readSwitch)),
  links: optional(list('links', readLink, { most: MOST_LINKS })),
});

/** One bone, its switches and links; what concerns its neighbours is checked afterwards. */
export const readBone: Reader<Bone, Known> = (value, known) => {
  const bone = readFields(value, known);
  const { switches = [], links = [] } = bone;
  within(['switches'], () => refuseRepeats(switches, 'switch of this bone'));
  within(['links'], () => refuseRepeats(links, 'link of this bone'));
  for (const [i, link] of links.entries()) within(['links', i], () => checkLink(link, bone, known));
  return bone;
};
