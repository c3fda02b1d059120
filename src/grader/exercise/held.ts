import { fieldOf, isObject } from '../../solver/document/structures.ts';

/** Values that inputs are held at, by input id. */
export type Values = Readonly<Record<string, number>>;

/** The response with its input values changed, where it has any. */
export function mapInputs(response: unknown, change: (values: Values) => Values): unknown {
  const inputs = fieldOf(response, 'inputs');
  return isObject(inputs) ? { inputs: change(inputs as Values) } : response;
}
