import {
  type Bone,
  type Driver,
  type Link,
  type LinkKind,
  type Mesh,
  type Rig,
  ROLES,
  type Switch,
  type TurnOrder,
} from '../../src/solver/document/rig.ts';
import { between, chance, pick, type Random, shuffled, sometimes, whole } from './random.ts';
import { type Drivable, randomDrivers } from './randomDrivers.ts';
import { randomLink, randomReach } from './randomLinks.ts';
import { randomTurn, restTip } from './randomVectors.ts';

export interface RigOptions {
  /** How many bones; 2 to 12 where not said. */
  bones?: number;
  /** How many drivers are tried; 0 to 5 where not said. */
  drivers?: number;
  /** Which kinds of link; all where not said. */
  kinds?: readonly LinkKind[];
  /** Links and drivers may name any bone, so the rig may have a cycle; not where not said. */
  cycles?: boolean;
  /** Some names end in a side word; they do where not said. */
  sides?: boolean;
  /** Names that trip over the prototypes of JavaScript objects; none where not said. */
  oddNames?: boolean;
  mesh?: boolean;
  /** Some bones rest at exact quarter and half turns, where special cases live; they do where not said. */
  roundTurns?: boolean;
}

const KINDS: readonly LinkKind[] = ['follow', 'aim', 'span', 'share', 'limit', 'reach'];
const WORDS = ['otter_brow', 'heron_neck', 'toad_eye', 'crane_boom', 'dog_paw', 'kite', 'bellows_rib'];
const ODD_NAMES = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', '0', '-1', '_'];
const ORDERS: readonly TurnOrder[] = ['xyz', 'xzy', 'yxz', 'yzx', 'zxy', 'zyx'];

function randomName(random: Random, index: number, { sides = true, oddNames = false }: RigOptions): string {
  if (oddNames && index < ODD_NAMES.length && chance(random, 0.5)) return ODD_NAMES[index]!;
  return `${pick(random, WORDS)}_${index}${sides ? pick(random, ['', '_left', '_right']) : ''}`;
}

const randomLocks = (random: Random) => {
  const three = (): [boolean, boolean, boolean] => [chance(random, 0.5), chance(random, 0.5), chance(random, 0.5)];
  return {
    ...sometimes(random, 'move', three),
    ...sometimes(random, 'turn', three),
    ...sometimes(random, 'size', three),
  };
};

function randomSwitch(random: Random, index: number): Switch {
  const min = pick(random, [0, 0, between(random, -1, 0)]);
  const max = pick(random, [1, 1, between(random, 0.5, 2)]);
  const sliding = sometimes(random, 'sliding', () => chance(random, 0.7), 0.8);
  const initial = sliding.sliding ? between(random, min, max) : pick(random, [min, max]);
  return { name: `together_${index}`, min, max, default: initial, ...sliding };
}

const randomSwitches = (random: Random): Switch[] =>
  Array.from({ length: whole(random, 1, 2) }, (_, i) => randomSwitch(random, i));

/** A bone without links. Bones hang from earlier ones, so parents form no loop. */
function bareBone(random: Random, name: string, earlier: readonly Bone[], roundTurns: boolean): Bone {
  const parent = earlier.length > 0 && chance(random, 0.8) ? pick(random, earlier.slice(-4)) : null;
  const attached = parent !== null && chance(random, 0.3);
  const base = attached
    ? restTip(parent.rest.base, parent.rest.turn, parent.rest.length)
    : ([0, 1, 2].map((i) => (parent?.rest.base[i] ?? 0) + between(random, -0.4, 0.4)) as [number, number, number]);
  return {
    name,
    parent: parent?.name ?? null,
    role: pick(random, ROLES),
    rest: { base, turn: randomTurn(random, roundTurns ? 0.3 : 0), length: between(random, 0.05, 0.5) },
    ...(attached ? { attach: 'tip' as const } : sometimes(random, 'attach', () => 'free' as const, 0.1)),
    ...sometimes(random, 'inherits', () => pick(random, ['all', 'uniform', 'turn'] as const)),
    ...sometimes(random, 'turnOrder', () => pick(random, ORDERS)),
    ...sometimes(random, 'locks', () => randomLocks(random), 0.2),
    ...sometimes(random, 'switches', () => randomSwitches(random), 0.4),
  };
}

/** Whether bone `i` may carry a reach: its parent is the bone made just before, which has no such child yet. */
const canReach = (bones: readonly Bone[], i: number): boolean => i >= 2 && bones[i]!.parent === bones[i - 1]!.name;

function randomLinks(random: Random, bones: readonly Bone[], i: number, options: RigOptions, reaches: boolean): Link[] {
  const readable = readableBy(bones, i, options, reaches).map((bone) => bone.name);
  const attached = bones[i]!.attach === 'tip';
  const links = Array.from({ length: pick(random, [0, 1, 1, 2, 3]) }, (_, n) =>
    randomLink(random, { name: `watch_${n}`, bones: readable, attached }, options.kinds ?? KINDS),
  ).filter((link) => link !== null);
  if (!reaches) return links;
  const reach = randomReach(random, { name: 'grasp', bones: readable, attached });
  return [...links.slice(0, 1), reach, ...links.slice(1)];
}

/** The bones that bone `i`, its links and its drivers may read. A reach turns the bone before, so not that one then. */
const readableBy = (bones: readonly Bone[], i: number, { cycles }: RigOptions, reaches: boolean): readonly Bone[] =>
  cycles ? bones : bones.slice(0, reaches ? i - 1 : i);

function randomMesh(random: Random): Mesh {
  const vertices = whole(random, 3, 24);
  const triangles = Array.from({ length: 3 * whole(random, 1, 12) }, () => whole(random, 0, vertices - 1));
  const positions = Array.from({ length: 3 * vertices }, () => between(random, -1, 1));
  return { positions, triangles, ...sometimes(random, 'skinning', () => pick(random, ['linear', 'dual'] as const)) };
}

/** A readable rig: every kind of link, input and output turns up over enough seeds. Bones stand in any order. */
export function randomRig(random: Random, options: RigOptions = {}): Rig {
  const bare: Bone[] = [];
  const count = options.bones ?? whole(random, 2, 12);
  for (let i = 0; i < count; i++)
    bare.push(bareBone(random, randomName(random, i, options), bare, options.roundTurns ?? true));

  const allowed = (options.kinds ?? KINDS).includes('reach');
  const drivable = bare.map((bone, i): Drivable => {
    const reaches = allowed && canReach(bare, i) && chance(random, 0.5);
    const links = randomLinks(random, bare, i, options, reaches);
    return { bone: links.length > 0 ? { ...bone, links } : bone, readable: readableBy(bare, i, options, reaches) };
  });
  const drivers: Driver[] = randomDrivers(
    random,
    drivable,
    options.drivers ?? whole(random, 0, 5),
    options.sides ?? true,
  );
  return {
    format: 'counterpose/rig',
    version: 1,
    ...sometimes(random, 'title', () => 'Saltmarsh Players, a trial', 0.3),
    bones: shuffled(
      random,
      drivable.map(({ bone }) => bone),
    ),
    ...(drivers.length > 0 && { drivers }),
    ...(options.mesh && { mesh: randomMesh(random) }),
  };
}

export { randomPose } from './randomPose.ts';
