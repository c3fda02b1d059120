import type {
  AimLink,
  FollowLink,
  LimitLink,
  Link,
  LinkKind,
  ReachLink,
  ShareLink,
  SpanLink,
  UpToward,
} from '../document/rig.ts';
import { type Rename, reflectAxis, reflectBounds, reflectPoint, reflectVector } from './values.ts';

function reflectToward(toward: UpToward, rename: Rename): UpToward {
  if ('direction' in toward) return { direction: reflectVector(toward.direction) };
  if ('axis' in toward) return { ...toward, bone: rename(toward.bone), axis: reflectAxis(toward.axis) };
  return reflectPoint(toward, rename);
}

const reflectUp = ({ axis, toward }: NonNullable<AimLink['up']>, rename: Rename) => ({
  axis: reflectAxis(axis),
  toward: reflectToward(toward, rename),
});

const reflectAim = (link: AimLink, rename: Rename): AimLink => ({
  ...link,
  target: reflectPoint(link.target, rename),
  ...(link.axis !== undefined && { axis: reflectAxis(link.axis) }),
  ...(link.up && { up: reflectUp(link.up, rename) }),
});

const reflectSource = <L extends FollowLink | ShareLink>(link: L, rename: Rename): L => ({
  ...link,
  source: rename(link.source),
});

const reflectSpan = (link: SpanLink, rename: Rename): SpanLink => ({
  ...link,
  target: reflectPoint(link.target, rename),
});

function reflectMove({ min, max }: NonNullable<LimitLink['move']>): NonNullable<LimitLink['move']> {
  const [least, most] = reflectBounds([min[0], max[0]]);
  return { min: [least, min[1], min[2]], max: [most, max[1], max[2]] };
}

const reflectLimit = (link: LimitLink): LimitLink => ({
  ...link,
  ...(link.move && { move: reflectMove(link.move) }),
  ...(link.yaw && { yaw: reflectBounds(link.yaw) }),
  ...(link.twist && { twist: reflectBounds(link.twist) }),
});

const reflectReach = (link: ReachLink, rename: Rename): ReachLink => ({
  ...link,
  target: reflectPoint(link.target, rename),
  ...(link.pole && { pole: reflectPoint(link.pole, rename) }),
});

const KINDS: { readonly [K in LinkKind]: (link: Extract<Link, { kind: K }>, rename: Rename) => Link } = {
  follow: reflectSource,
  aim: reflectAim,
  span: reflectSpan,
  share: reflectSource,
  limit: reflectLimit,
  reach: reflectReach,
};

/** A link across x = 0, with the bones it names renamed. Its own name, its weight and a share's fraction stay. */
export function reflectLink(link: Link, rename: Rename): Link {
  const reflectKind = KINDS[link.kind] as (link: Link, rename: Rename) => Link;
  return reflectKind(link, rename);
}
