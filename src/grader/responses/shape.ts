import type { Reading } from '../../solver/document/refusal.ts';
import type { Driver, Rig } from '../../solver/document/rig.ts';
import { isObject } from '../../solver/document/structures.ts';
import { inWords } from '../../solver/document/words.ts';
import { readRig } from '../../solver/index.ts';
import type { ResponseKind, Work } from './response.ts';

/** `{ "map": a driver's map as in a rig document }`, taken by the driver that the exercise names. */
export const shapeResponse: ResponseKind = {
  schema() {
    const pair = { type: 'array', items: { type: 'number' }, minItems: 2, maxItems: 2 };
    const bezier = { type: 'array', items: { type: 'number' }, minItems: 4, maxItems: 4 };
    const shape = {
      anyOf: [
        { enum: ['straight', 'eased', 'stepped'] },
        { type: 'object', properties: { bezier }, required: ['bezier'], additionalProperties: false },
      ],
    };
    const map = {
      type: 'object',
      properties: { keys: { type: 'array', items: pair, minItems: 2 }, shape, beyond: { enum: ['hold', 'extend'] } },
      required: ['keys'],
      additionalProperties: false,
    };
    return { type: 'object', properties: { map }, required: ['map'], additionalProperties: false };
  },
  read(response, exercise) {
    if (!isObject(response) || Object.keys(response).join() !== 'map') {
      return {
        ok: false,
        refusal: { place: '', found: inWords(response), expected: 'a response: an object with the field map' },
      };
    }
    const at = exercise.start.drivers!.findIndex(({ name }) => name === exercise.shape);
    const drivers = exercise.start.drivers!.map((driver, i) => {
      return i === at ? ({ ...driver, map: response.map } as Driver) : driver;
    });
    return mapPlace(readRig({ ...exercise.start, drivers }), `/drivers/${at}/map`);
  },
};

/** The rig's refusals, told where they stand in the response. */
function mapPlace(read: Reading<Rig>, mapAt: string): Reading<Work> {
  if (read.ok) return { ok: true, value: { rig: read.value } };
  const { place, found, expected } = read.refusal;
  return { ok: false, refusal: { place: place.replace(mapAt, '/map'), found, expected } };
}
