import type { Bone, Link, Quat } from '../../../solver/document/rig.ts';
import { axisVector } from '../../../solver/document/vectors.ts';
import { type Vary, varyBones, varyLinks } from '../variation.ts';

/** Every default of a link written out. */
export const spellOut: Vary = (rig) => varyLinks(rig, (link) => [['defaults written out', spelledOut(link)]]);

function spelledOut(link: Link): Link {
  const common = { weight: 1, ...link };
  if (common.kind === 'follow') return { channels: ['move', 'turn', 'size'], offset: 'none', ...common };
  if (common.kind === 'aim') return { axis: '+z', ...common, target: { at: 0, ...common.target } };
  if (common.kind === 'span') return { sides: 'free', ...common, target: { at: 0, ...common.target } };
  return common;
}

/** An axis by its vector. */
export const axisByVector: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'aim') return [];
    return [['the axis as a vector', { ...link, axis: axisVector(link.axis ?? '+z') }]];
  });

/** The rest turn by the opposite quaternion, which is the same turn. */
export const negateTurn: Vary = (rig, { spoken }) =>
  varyBones(rig, (bone) => {
    if (spoken.has(bone.name)) return [];
    const [x, y, z, w] = bone.rest.turn;
    const turn: Quat = [0 - x, 0 - y, 0 - z, 0 - w];
    return [['its rest turn by the opposite quaternion', { ...bone, rest: { ...bone.rest, turn } }]];
  });

/** Two links next to each other that follow in channels of their own, in the other order. */
export const swapIndependent: Vary = (rig) =>
  varyBones(rig, (bone) =>
    (bone.links ?? []).slice(1).flatMap((second, i): [string, Bone][] => {
      const first = bone.links![i]!;
      if (!areIndependent(first, second)) return [];
      const links = [...bone.links!.slice(0, i), second, first, ...bone.links!.slice(i + 2)];
      return [[`${first.name} and ${second.name} in the other order`, { ...bone, links }]];
    }),
  );

function areIndependent(a: Link, b: Link): boolean {
  if (a.kind !== 'follow' || b.kind !== 'follow') return false;
  const all = ['move', 'turn', 'size'] as const;
  const [own, other] = [a.channels ?? all, b.channels ?? all];
  return !own.some((channel) => other.includes(channel));
}
