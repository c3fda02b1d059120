import { type Rename, renameInLink } from '../document/renaming.ts';
import type { AimLink, LimitLink, Link, LinkKind, UpToward } from '../document/rig.ts';
import { reflectAxis, reflectBounds, reflectVector } from './values.ts';

function reflectToward(toward: UpToward): UpToward {
  if ('direction' in toward) return { direction: reflectVector(toward.direction) };
  return 'axis' in toward ? { ...toward, axis: reflectAxis(toward.axis) } : toward;
}

const reflectUp = ({ axis, toward }: NonNullable<AimLink['up']>): NonNullable<AimLink['up']> => ({
  axis: reflectAxis(axis),
  toward: reflectToward(toward),
});

const reflectAim = (link: AimLink): AimLink => ({
  ...link,
  ...(link.axis !== undefined && { axis: reflectAxis(link.axis) }),
  ...(link.up && { up: reflectUp(link.up) }),
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

/** For a kind that has no side to it but the bones it names. */
const same = <L extends Link>(link: L): L => link;

const KINDS: { readonly [K in LinkKind]: (link: Extract<Link, { kind: K }>) => Link } = {
  follow: same,
  aim: reflectAim,
  span: same,
  share: same,
  limit: reflectLimit,
  reach: same,
};

/** A link across x = 0, with the bones it names renamed. Its own name, its weight and a share's fraction stay. */
export function reflectLink(link: Link, rename: Rename): Link {
  const reflectKind = KINDS[link.kind] as (link: Link) => Link;
  return renameInLink(reflectKind(link), rename);
}
