/** A rig by seed: all kinds of links, drivers and inheritance; coincidences and degenerate places are common. */
import type { Bone, Link, Rig, Switch, TurnOrder } from '../../../src/solver/document/rig.ts';
import { type Draw, drawBySeed, perhaps, shuffled } from './draw.ts';
import { type Driven, drawDrivers } from './drawDrivers.ts';
import { anyLink, reach } from './drawLinks.ts';
import { gridVector, tipOf, turn, vector } from './geometry.ts';

const WORDS = ['otter', 'toad', 'marsh_dog', 'heron', 'ferry_crane', 'twin_vanes', 'bellows'];
const ORDERS: readonly TurnOrder[] = ['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'];

export interface DrawOptions {
  /** Bones may name any bone, so that many rigs have a cycle. */
  anyReader?: boolean;
  /** How often places and turns are round, 0 to 1; drawn where not said. */
  round?: number;
}

function drawSwitch(draw: Draw, index: number): Switch {
  const [min, max] = draw.one([
    [0, 1],
    [0, 1],
    [-1, 1],
    [0, draw.real(0.5, 2)],
  ] as const);
  const sliding = draw.often(0.6);
  return { name: `cue_${index}`, min, max, default: sliding ? draw.real(min, max) : draw.one([min, max]), sliding };
}

/** A bone without links; its parent stands before it. */
function bareBone(draw: Draw, index: number, earlier: readonly Bone[], round: number): Bone {
  const parent = earlier.length > 0 && draw.often(0.85) ? draw.one(earlier.slice(-3)) : null;
  const attached = parent !== null && draw.often(0.35);
  const near = parent?.rest.base ?? [0, 0, 0];
  const offset = draw.often(round) ? gridVector(draw, 2) : vector(draw, 0.5);
  const base = attached
    ? tipOf(parent.rest.base, parent.rest.turn, parent.rest.length)
    : ([near[0] + offset[0], near[1] + offset[1], near[2] + offset[2]] as const);
  return {
    name: `${draw.one(WORDS)}_${index}${draw.one(['', '', '_left', '_right'])}`,
    parent: parent?.name ?? null,
    role: 'helper',
    rest: { base, turn: turn(draw, round), length: draw.one([0.25, 0.5, draw.real(0.05, 0.8)]) },
    ...(attached && { attach: 'tip' as const }),
    ...perhaps(draw, 0.5, 'inherits', () => draw.one(['all', 'uniform', 'turn'] as const)),
    ...perhaps(draw, 0.4, 'turnOrder', () => draw.one(ORDERS)),
    ...perhaps(draw, 0.4, 'switches', () => [drawSwitch(draw, 0), drawSwitch(draw, 1)]),
  };
}

/** Only under the bone just before it, so that no bone is the upper of two. */
const mayReach = (bones: readonly Bone[], i: number): boolean => i > 0 && bones[i].parent === bones[i - 1].name;

function linked(draw: Draw, bones: readonly Bone[], i: number, { anyReader }: DrawOptions): Driven {
  const bone = bones[i];
  const reaches = mayReach(bones, i) && draw.often(0.5) && (i > 1 || anyReader === true);
  const readable = anyReader && draw.often(0.5) ? bones : bones.slice(0, reaches ? i - 1 : i);
  const place = { readable: readable.map(({ name }) => name), attached: bone.attach === 'tip' };
  const links: Link[] = Array.from({ length: draw.one([0, 1, 1, 2, 3]) }, (_, n) =>
    anyLink(draw, { ...place, name: `hold_${n}` }),
  );
  if (reaches && readable.length > 0) {
    links.splice(draw.whole(0, links.length), 0, reach(draw, { ...place, name: 'grasp' }));
  }
  return { bone: links.length > 0 ? { ...bone, links } : bone, readable };
}

export function drawRig(seed: number, options: DrawOptions = {}): Rig {
  const draw = drawBySeed(seed);
  const drawn = draw.one([0.2, 0.5, 1]);
  const round = options.round ?? drawn;
  const bare: Bone[] = [];
  const count = draw.whole(3, 9);
  for (let i = 0; i < count; i++) bare.push(bareBone(draw, i, bare, round));
  const driven = bare.map((_, i) => linked(draw, bare, i, options));
  const drivers = drawDrivers(draw, driven, draw.whole(0, 5));
  const bones = shuffled(
    draw,
    driven.map(({ bone }) => bone),
  );
  return { format: 'counterpose/rig', version: 1, bones, ...(drivers.length > 0 && { drivers }) };
}
