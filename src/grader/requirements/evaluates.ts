import type { OfKind, StructureKind } from './kind.ts';

/** 1 where the rig has a cycle and so cannot be evaluated. */
export const evaluates: StructureKind<OfKind<'evaluates'>> = {
  kind: 'evaluates',
  about: 'structure',
  unit: () => 'cycles',
  bones: () => [],
  inputs: () => [],
  missed: (_, { places }) => `The rig waits for itself and cannot be evaluated: ${places.join(' → ')}.`,
  inspect: (_, { cycle }) => (cycle ? { measured: 1, places: [...cycle] } : { measured: 0, places: [] }),
};
