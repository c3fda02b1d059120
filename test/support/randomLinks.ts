import type { Channel, LimitLink, Link, LinkKind, Point, UpToward } from '../../src/solver/document/rig.ts';
import { between, chance, pick, type Random, shuffled, sometimes, whole } from './random.ts';
import { axisAcross, randomAxis, randomDirection, randomVector } from './randomVectors.ts';

/** What a link of a random bone may name and look like. */
export interface LinkSetting {
  name: string;
  /** Bones that may be read; never empty except for limits. */
  bones: readonly string[];
  /** Limits on `move` are refused where the base is on the parent's tip. */
  attached: boolean;
}

export const randomPoint = (random: Random, bones: readonly string[]): Point => ({
  bone: pick(random, bones),
  ...sometimes(random, 'at', () => pick(random, [0, 1, random()])),
});

const weight = (random: Random) => sometimes(random, 'weight', () => pick(random, [0, 1, random(), random()]), 0.6);

function randomToward(random: Random, bones: readonly string[]): UpToward {
  if (chance(random, 0.4)) return { direction: randomDirection(random) };
  if (chance(random, 0.5)) return randomPoint(random, bones);
  return { bone: pick(random, bones), axis: randomAxis(random) };
}

function randomAim(random: Random, { name, bones }: LinkSetting): Link {
  const axis = chance(random, 0.5) ? randomAxis(random) : undefined;
  return {
    name,
    kind: 'aim',
    target: randomPoint(random, bones),
    ...(axis && { axis }),
    ...sometimes(random, 'up', () => ({
      axis: axisAcross(random, axis ?? '+z'),
      toward: randomToward(random, bones),
    })),
    ...weight(random),
  };
}

const CHANNELS: readonly Channel[] = ['move', 'turn', 'size'];

const randomFollow = (random: Random, { name, bones }: LinkSetting): Link => ({
  name,
  kind: 'follow',
  source: pick(random, bones),
  ...sometimes(random, 'channels', () => shuffled(random, CHANNELS).slice(0, whole(random, 1, 3))),
  ...sometimes(random, 'offset', () => pick(random, ['none', 'keep'] as const), 0.7),
  ...weight(random),
});

const randomSpan = (random: Random, { name, bones }: LinkSetting): Link => ({
  name,
  kind: 'span',
  target: randomPoint(random, bones),
  ...sometimes(random, 'sides', () => pick(random, ['free', 'volume'] as const)),
  ...sometimes(random, 'restLength', () => between(random, 0.05, 0.6)),
  ...sometimes(random, 'least', () => between(random, 0.2, 0.9), 0.3),
  ...sometimes(random, 'most', () => between(random, 1, 4), 0.3),
  ...weight(random),
});

const randomShare = (random: Random, { name, bones }: LinkSetting): Link => ({
  name,
  kind: 'share',
  source: pick(random, bones),
  fraction: pick(random, [0.5, -1, between(random, -2, 2)]),
  ...weight(random),
});

/** Least and most within ± `size`, in order. */
function bounds(random: Random, size: number): readonly [number, number] {
  const a = between(random, -size, size);
  const b = between(random, -size, size);
  return [Math.min(a, b), Math.max(a, b)];
}

function moveBounds(random: Random): NonNullable<LimitLink['move']> {
  const centre = randomVector(random, 0.1);
  const half = randomVector(random, 0.1);
  return {
    min: [centre[0] - Math.abs(half[0]), centre[1] - Math.abs(half[1]), centre[2] - Math.abs(half[2])],
    max: [centre[0] + Math.abs(half[0]), centre[1] + Math.abs(half[1]), centre[2] + Math.abs(half[2])],
  };
}

function randomLimit(random: Random, { name, attached }: LinkSetting): Link {
  const bound = {
    ...(!attached && sometimes(random, 'move', () => moveBounds(random))),
    ...sometimes(random, 'yaw', () => bounds(random, 180), 0.4),
    ...sometimes(random, 'pitch', () => bounds(random, 90), 0.4),
    ...sometimes(random, 'twist', () => bounds(random, 180), 0.4),
    ...sometimes(random, 'cone', () => between(random, 0, 180), 0.3),
  };
  const some = Object.keys(bound).length > 0 ? bound : { cone: 45 };
  return { name, kind: 'limit', ...some, ...weight(random) };
}

export const randomReach = (random: Random, { name, bones }: LinkSetting): Link => ({
  name,
  kind: 'reach',
  target: randomPoint(random, bones),
  ...sometimes(random, 'pole', () => randomPoint(random, bones)),
  ...weight(random),
});

const MAKERS = { aim: randomAim, follow: randomFollow, span: randomSpan, share: randomShare, limit: randomLimit };

/** A link of any of the kinds but `reach`, which needs a place in the chain; null where nothing can be read. */
export function randomLink(random: Random, setting: LinkSetting, kinds: readonly LinkKind[]): Link | null {
  const usable = kinds.filter((kind) => kind !== 'reach' && (kind === 'limit' || setting.bones.length > 0));
  const kind = usable.length > 0 ? pick(random, usable) : null;
  return kind && kind !== 'reach' ? MAKERS[kind](random, setting) : null;
}
