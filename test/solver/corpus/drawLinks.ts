/** One link of each kind, with every field that the format knows turning up over enough seeds. */
import type { Channel, LimitLink, Link, LinkKind, Point, UpToward, Vec3 } from '../../../src/solver/document/rig.ts';
import { type Draw, perhaps, shuffled } from './draw.ts';
import { axis, axisAcross, direction } from './geometry.ts';

export interface LinkPlace {
  name: string;
  /** Bones that may be named. */
  readable: readonly string[];
  attached: boolean;
}

export const point = (draw: Draw, readable: readonly string[]): Point => ({
  bone: draw.one(readable),
  ...perhaps(draw, 0.5, 'at', () => draw.one([0, 1, 0.5, draw.real(0, 1)])),
});

const weight = (draw: Draw) =>
  perhaps(draw, 0.6, 'weight', () => draw.one([0, 1, 0.5, draw.real(0, 1), draw.real(0, 1)]));

function toward(draw: Draw, readable: readonly string[]): UpToward {
  if (draw.often(0.4)) return { direction: draw.one<Vec3>([[0, 1, 0], [0, 0, -2], direction(draw)]) };
  if (draw.often(0.5)) return point(draw, readable);
  return { bone: draw.one(readable), axis: axis(draw) };
}

function aim(draw: Draw, { name, readable }: LinkPlace): Link {
  const own = draw.often(0.6) ? axis(draw) : undefined;
  const up = () => ({ axis: axisAcross(draw, own ?? '+z'), toward: toward(draw, readable) });
  return {
    name,
    kind: 'aim',
    target: point(draw, readable),
    ...(own && { axis: own }),
    ...perhaps(draw, 0.6, 'up', up),
    ...weight(draw),
  };
}

const CHANNELS: readonly Channel[] = ['move', 'turn', 'size'];

const follow = (draw: Draw, { name, readable }: LinkPlace): Link => ({
  name,
  kind: 'follow',
  source: draw.one(readable),
  ...perhaps(draw, 0.5, 'channels', () => shuffled(draw, CHANNELS).slice(0, draw.whole(1, 3))),
  ...perhaps(draw, 0.7, 'offset', () => draw.one(['none', 'keep'] as const)),
  ...weight(draw),
});

const span = (draw: Draw, { name, readable }: LinkPlace): Link => ({
  name,
  kind: 'span',
  target: point(draw, readable),
  ...perhaps(draw, 0.6, 'sides', () => draw.one(['free', 'volume'] as const)),
  ...perhaps(draw, 0.5, 'restLength', () => draw.real(0.1, 1)),
  ...perhaps(draw, 0.3, 'least', () => draw.real(0.2, 0.9)),
  ...perhaps(draw, 0.3, 'most', () => draw.real(1, 4)),
  ...weight(draw),
});

const share = (draw: Draw, { name, readable }: LinkPlace): Link => ({
  name,
  kind: 'share',
  source: draw.one(readable),
  fraction: draw.one([0.5, 1, -1, draw.real(-2, 2)]),
  ...weight(draw),
});

function bounds(draw: Draw, size: number): readonly [number, number] {
  const [a, b] = draw.often(0.3)
    ? [draw.one([-1, 0, 0.5]) * size, size]
    : [draw.real(-size, size), draw.real(-size, size)];
  return [Math.min(a, b), Math.max(a, b)];
}

function moveBounds(draw: Draw): NonNullable<LimitLink['move']> {
  const pairs = [bounds(draw, 0.25), bounds(draw, 0.25), bounds(draw, 0.25)];
  return { min: pairs.map((pair) => pair[0]) as unknown as Vec3, max: pairs.map((pair) => pair[1]) as unknown as Vec3 };
}

function limit(draw: Draw, { name, attached }: LinkPlace): Link {
  const drawn = {
    ...(attached ? {} : perhaps(draw, 0.5, 'move', () => moveBounds(draw))),
    ...perhaps(draw, 0.4, 'yaw', () => bounds(draw, 180)),
    ...perhaps(draw, 0.4, 'pitch', () => bounds(draw, 90)),
    ...perhaps(draw, 0.4, 'twist', () => bounds(draw, 180)),
    ...perhaps(draw, 0.3, 'cone', () => draw.one([0, 45, 180, draw.real(0, 180)])),
  };
  return { name, kind: 'limit', ...(Object.keys(drawn).length > 0 ? drawn : { cone: 60 }), ...weight(draw) };
}

export const reach = (draw: Draw, { name, readable }: LinkPlace): Link => ({
  name,
  kind: 'reach',
  target: point(draw, readable),
  ...perhaps(draw, 0.6, 'pole', () => point(draw, readable)),
  ...weight(draw),
});

const MAKERS = { aim, follow, span, share, limit };

/** A link of any kind but reach; a limit where no bone may be named. */
export function anyLink(draw: Draw, place: LinkPlace): Link {
  const kinds = ['follow', 'aim', 'span', 'share', 'limit'] as const satisfies LinkKind[];
  return MAKERS[place.readable.length > 0 ? draw.one(kinds) : 'limit'](draw, place);
}
