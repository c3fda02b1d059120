import { readAt, reading, refuse } from '../../solver/document/reader.ts';
import { list, needed, record } from '../../solver/document/structures.ts';
import { oneOf, refuseRepeatedWords } from '../../solver/document/values.ts';
import type { Exercise } from '../exercise/exercise.ts';
import type { ResponseKind, Work } from './response.ts';

/** The names to be put in order: those of the exercise's requirement of kind in-order. */
function itemsOf({ requirements }: Exercise): readonly string[] {
  const asked = requirements.find((requirement) => requirement.kind === 'in-order');
  return asked?.kind === 'in-order' ? asked.items : [];
}

/** `{ "order": [every name once] }`. */
export const orderResponse: ResponseKind = {
  schema(exercise) {
    const items = itemsOf(exercise);
    const order = {
      type: 'array',
      items: { enum: items },
      minItems: items.length,
      maxItems: items.length,
      uniqueItems: true,
    };
    return { type: 'object', properties: { order }, required: ['order'], additionalProperties: false };
  },
  read(response, exercise) {
    const items = itemsOf(exercise);
    const whole = record<{ order: readonly string[] }>('a response', { order: needed(list('names', oneOf(items))) });
    return reading((): Work => {
      const { order } = whole(response, null);
      readAt('order', () => refuseRepeatedWords(order, 'name'), order, null);
      if (order.length !== items.length) refuse(`${order.length} names`, `each of ${items.join(', ')} once`, ['order']);
      return { rig: exercise.start, order };
    });
  },
};
