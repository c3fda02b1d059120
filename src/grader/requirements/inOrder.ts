import { list, needed } from '../../solver/document/structures.ts';
import { text } from '../../solver/document/values.ts';
import { waits } from '../../solver/index.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader } from './requirement.ts';

export interface InOrder extends RequirementBase {
  kind: 'in-order';
  /** Bones, links ("bone.link"), drivers and switches to be put in the order of their evaluation. */
  items: readonly string[];
}

/** How many things stand before one that they wait for. */
export const inOrder: StructureKind<InOrder> = {
  kind: 'in-order',
  about: 'structure',
  read: requirementReader<InOrder>('in-order', { items: needed(list('names', text, { least: 2 })) }),
  unit: () => 'things',
  bones: () => [],
  inputs: () => [],
  missed: (_, { places }) => `Too early: ${places.join('; ')}.`,
  inspect({ items }, { exercise, order }) {
    if (!order) return { measured: items.length, places: [] };
    const before = waits(exercise.start);
    const places = order.flatMap((name, i) => {
      const late = order.slice(i + 1).find((other) => before.get(name)?.has(other));
      return late === undefined ? [] : [`${name} waits for ${late}`];
    });
    return { measured: places.length, places };
  },
};
