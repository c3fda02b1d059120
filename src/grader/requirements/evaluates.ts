import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface Evaluates extends RequirementBase {
  kind: 'evaluates';
}

/** 1 where the rig has a cycle and so cannot be evaluated. */
export const evaluates: StructureKind<Evaluates> = {
  kind: 'evaluates',
  about: 'structure',
  read: requirementReader<Evaluates>('evaluates', {}),
  unit: () => 'cycles',
  bones: () => [],
  inputs: () => [],
  missed: (_, { places }) => `The rig waits for itself and cannot be evaluated: ${places.join(' → ')}.`,
  inspect: (_, { cycle }) => (cycle ? { measured: 1, places: [...cycle] } : { measured: 0, places: [] }),
};
