import { type Edit, movedBy } from './draft.ts';

/** Gives a number that is asked for; null takes it back. */
export function setValue(requirement: string, value: number | null): Edit {
  return {
    says: 'change a number of the answer',
    merge: `value ${requirement}`,
    apply: (draft) => {
      const { [requirement]: _, ...others } = draft.response?.values ?? {};
      return { ...draft, response: { values: value === null ? others : { ...others, [requirement]: value } } };
    },
  };
}

/** Moves a name earlier or later in the order that is asked for. */
export function moveInOrder(order: readonly string[], name: string, places: number): Edit {
  return {
    says: `move ${name} ${places < 0 ? 'up' : 'down'}`,
    apply: (draft) => ({ ...draft, response: { order: movedBy(order, order.indexOf(name), places) } }),
  };
}
