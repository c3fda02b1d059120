import { bindMesh, skinMesh } from '../../solver/index.ts';
import { meshVolume } from '../measure/volume.ts';
import { worldAt } from '../subject.ts';
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
    const { mesh } = subject.rig;
    const binding = bindMesh(subject.rig);
    if (!mesh || !binding) return () => Number.POSITIVE_INFINITY;
    const skinned = new Float64Array(mesh.positions.length);
    const atRest = meshVolume(mesh.positions, mesh.triangles);
    return (values) => {
      skinMesh(binding, worldAt(subject, values), skinned);
      return 100 * Math.abs(meshVolume(skinned, mesh.triangles) / atRest - 1);
    };
  },
};
