import type { Link } from '../../../solver/document/rig.ts';
import { swapSide } from '../../../solver/index.ts';
import type { Vary } from '../variation.ts';
import { varyLinks, withBone } from '../variation.ts';

/** The link forgotten, and what drives it. */
export const dropLink: Vary = (rig) =>
  rig.bones.flatMap((bone) =>
    (bone.links ?? []).map((gone) => ({
      says: `${bone.name}.${gone.name}: forgotten`,
      rig: {
        ...withBone(rig, { ...bone, links: bone.links!.filter((link) => link !== gone) }),
        drivers: (rig.drivers ?? []).filter(
          ({ output }) => !('link' in output && output.bone === bone.name && output.link === gone.name),
        ),
      },
    })),
  );

/** The other side's bone, or any other, taken for the one meant. */
export const retarget: Vary = (rig) =>
  varyLinks(rig, (link, bone) => {
    if (link.kind === 'limit') return [];
    const meant = referenceOf(link);
    const others = rig.bones.map(({ name }) => name).filter((name) => name !== meant && name !== bone.name);
    const sided = others.filter((name) => name === swapSide(meant));
    const rest = others.filter((name) => name !== swapSide(meant)).slice(0, 3);
    return [...sided, ...rest].map((name) => [`reads ${name} in place of ${meant}`, withReference(link, name)]);
  });

type Reading = Exclude<Link, { kind: 'limit' }>;

function referenceOf(link: Reading): string {
  return link.kind === 'follow' || link.kind === 'share' ? link.source : link.target.bone;
}

function withReference(link: Reading, name: string): Link {
  if (link.kind === 'follow' || link.kind === 'share') return { ...link, source: name };
  return { ...link, target: { ...link.target, bone: name } };
}

/** Half the weight, or none. */
export const reweight: Vary = (rig) =>
  varyLinks(rig, (link) => [
    ['at half weight', { ...link, weight: (link.weight ?? 1) / 2 }],
    ['at no weight', { ...link, weight: 0 }],
  ]);

/** The offset lost, or kept where none was meant. */
export const reoffset: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'follow') return [];
    const offset = link.offset === 'keep' ? 'none' : 'keep';
    return [[`offset ${offset}`, { ...link, offset }]];
  });

/** Channels forgotten. */
export const rechannel: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'follow') return [];
    const channels = link.channels ?? (['move', 'turn', 'size'] as const);
    const without = channels.map((gone) => channels.filter((channel) => channel !== gone));
    return without
      .filter((left) => left.length > 0)
      .map((left) => [`follows in ${left.join(', ')} only`, { ...link, channels: left }]);
  });

/** A share's fraction with the wrong sign, or half of it. */
export const refraction: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'share') return [];
    return [
      ['shares the other way', { ...link, fraction: 0 - link.fraction }],
      ['shares half', { ...link, fraction: link.fraction / 2 }],
    ];
  });

/** A point at the other end of its bone. */
export const repoint: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind === 'follow' || link.kind === 'share' || link.kind === 'limit') return [];
    const at = (link.target.at ?? 0) > 0.5 ? 0 : 1;
    return [
      [`reads the ${at === 0 ? 'base' : 'tip'} of ${link.target.bone}`, { ...link, target: { ...link.target, at } }],
    ];
  });

/** Sides of a span, or its bounds, changed. */
export const respan: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'span') return [];
    const sides = link.sides === 'volume' ? 'free' : 'volume';
    return [
      [`sides ${sides}`, { ...link, sides }],
      ['stretches no further than its rest', { ...link, most: 1 }],
    ];
  });

/** Two links of a bone in the other order. */
export const swapLinks: Vary = (rig) =>
  rig.bones.flatMap((bone) => {
    const links = bone.links ?? [];
    return links.slice(1).map((_, i) => ({
      says: `${bone.name}: ${links[i]!.name} and ${links[i + 1]!.name} swapped`,
      rig: {
        ...rig,
        bones: rig.bones.map((one) =>
          one === bone
            ? { ...bone, links: [...links.slice(0, i), links[i + 1]!, links[i]!, ...links.slice(i + 2)] }
            : one,
        ),
      },
    }));
  });
