import type { Reader } from '../../solver/document/reader.ts';
import { dictionary, type Fields, list, needed, optional, record } from '../../solver/document/structures.ts';
import { exactly, finite, number, numberFrom, oneOf, text } from '../../solver/document/values.ts';
import type { Where } from '../exercise/inputs.ts';

/** What every requirement says of itself; each kind adds fields of its own. */
export interface RequirementBase {
  id: string;
  kind: string;
  /** Default 1. A requirement that the untouched start meets is a gate and earns nothing. */
  weight?: number;
  /** In the unit of the kind. */
  allowed: number;
  /** What is asked, in one sentence. */
  says: string;
  /** What to say of an answer that misses it, where the general sentence would teach less. */
  missed?: string;
  /** Inputs held at these values in every probe of this requirement. */
  at?: Readonly<Record<string, number>>;
}

/** Motion of a bone: of its base and tip in millimetres, or of its orientation in degrees. */
export type By = 'move' | 'turn';
export const by = oneOf<By>(['move', 'turn']);
export const unitOf = (requirement: { by: By }): string => (requirement.by === 'turn' ? 'degrees' : 'mm');

/** A part's id, or the name of a bone of the start; an input's id. */
export const spoken: Reader<string> = text;
export const spokenList: Reader<readonly string[]> = list('names', text, { least: 1 });
export const positive = number('a number above 0', (value) => value > 0);
export const where = record<Where>('a point', { bone: needed(spoken), at: optional(numberFrom(0, 1)) });

/** A reader for requirements of one kind: the common fields, and those the kind adds. */
export function requirementReader<R extends RequirementBase>(
  kind: R['kind'],
  own: Fields<Omit<R, keyof RequirementBase>>,
): Reader<R> {
  const common = {
    id: needed(text),
    kind: needed(exactly(kind)),
    weight: optional(positive),
    allowed: needed(number('a number from 0', (value) => value >= 0)),
    says: needed(text),
    missed: optional(text),
    at: optional(dictionary('values that inputs are held at', () => finite)),
  };
  return record<R>(`a requirement "${kind}"`, { ...common, ...own } as unknown as Fields<R>);
}
