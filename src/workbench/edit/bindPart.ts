import type { Edit } from './draft.ts';

/** Says which bone or switch is meant by a part of the task; null leaves it to the name that the task gives. */
export function bindPart(part: string, bound: string | null): Edit {
  return {
    says: bound === null ? `leave ${part} to its name` : `take ${bound} for ${part}`,
    apply: (draft) => {
      const { [part]: _, ...others } = draft.parts;
      return { ...draft, parts: bound === null ? others : { ...others, [part]: bound } };
    },
  };
}
