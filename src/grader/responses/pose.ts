import { reading } from '../../solver/document/reader.ts';
import { type Fields, needed, optional, record } from '../../solver/document/structures.ts';
import { numberFrom } from '../../solver/document/values.ts';
import type { ResponseKind, Work } from './response.ts';

type Inputs = Record<string, number>;

/** `{ "inputs": { input id: value } }`, each within its range; what is left out is at rest. */
export const poseResponse: ResponseKind = {
  schema({ inputs }) {
    const properties = inputs.map(({ id, min, max }) => [id, { type: 'number', minimum: min, maximum: max }]);
    const values = { type: 'object', properties: Object.fromEntries(properties), additionalProperties: false };
    return { type: 'object', properties: { inputs: values }, required: ['inputs'], additionalProperties: false };
  },
  read(response, exercise) {
    const ranges = exercise.inputs.map(({ id, min, max }) => [id, optional(numberFrom(min, max))]);
    const inputs = record<Inputs>('the inputs', Object.fromEntries(ranges) as unknown as Fields<Inputs>);
    const whole = record<{ inputs: Inputs }>('a response', { inputs: needed(inputs) });
    return reading((): Work => ({ rig: exercise.start, inputs: whole(response, null).inputs }));
  },
};
