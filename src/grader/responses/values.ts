import { reading } from '../../solver/document/reader.ts';
import { type Fields, needed, record } from '../../solver/document/structures.ts';
import { finite } from '../../solver/document/values.ts';
import type { Exercise } from '../exercise/exercise.ts';
import type { ResponseKind, Work } from './response.ts';

type Values = Record<string, number>;

const asked = ({ requirements }: Exercise): string[] =>
  requirements.filter(({ kind }) => kind === 'value').map(({ id }) => id);

/** `{ "values": { requirement id: number } }`, one for each number that is asked for. */
export const valuesResponse: ResponseKind = {
  schema(exercise) {
    const ids = asked(exercise);
    const values = {
      type: 'object',
      properties: Object.fromEntries(ids.map((id) => [id, { type: 'number' }])),
      required: ids,
      additionalProperties: false,
    };
    return { type: 'object', properties: { values }, required: ['values'], additionalProperties: false };
  },
  read(response, exercise) {
    const fields = Object.fromEntries(asked(exercise).map((id) => [id, needed(finite)])) as unknown as Fields<Values>;
    const whole = record<{ values: Values }>('a response', { values: needed(record('the values', fields)) });
    return reading((): Work => ({ rig: exercise.start, values: whole(response, null).values }));
  },
};
