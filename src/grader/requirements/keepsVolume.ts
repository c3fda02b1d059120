import { skinnedAt, skinOf } from '../measure/skin.ts';
import { meshVolume } from '../measure/volume.ts';
import type { BehaviourKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface KeepsVolume extends RequirementBase {
  kind: 'keeps-volume';
}

/** How much the volume that the mesh closes in differs from that at rest, per cent. */
export const keepsVolume: BehaviourKind<KeepsVolume> = {
  kind: 'keeps-volume',
  about: 'behaviour',
  read: requirementReader<KeepsVolume>('keeps-volume', {}),
  unit: () => '%',
  bones: () => [],
  inputs: () => [],
  missed: (_, { measured, allowed }) => `The volume changes by ${measured}; ${allowed} is allowed.`,
  meter(_, subject) {
    const skin = skinOf(subject);
    if (!skin) return () => Number.POSITIVE_INFINITY;
    const { binding, triangles } = skin;
    const atRest = meshVolume(binding.positions, triangles);
    return (values) => 100 * Math.abs(meshVolume(skinnedAt(subject, skin, values), triangles) / atRest - 1);
  },
};
