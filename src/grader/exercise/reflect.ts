import { kindOf, type Requirement } from '../requirements/table.ts';
import { reflectGauge } from '../responses/gauge.ts';
import { mapInputs, type Values } from './held.ts';
import type { Input, InputChannel } from './inputs.ts';
import type { Slip } from './works.ts';

/** Channels that change sign in a mirrored frame (x = 0 plane; +x of a bone runs opposite to the reflection). */
const NEGATED: ReadonlySet<InputChannel> = new Set(['move.x', 'turn.y', 'turn.z'] as const);

/** Swaps the words left and right wherever they stand alone or as a word of a name. */
export function swapSides(text: string): string {
  return text.replace(/(?<![a-z])(left|right)(?![a-z])/gi, (word) => matchCase(word, OTHER[word.toLowerCase()]!));
}
const OTHER: Readonly<Record<string, string>> = { left: 'right', right: 'left' };

function matchCase(model: string, word: string): string {
  return model[0] === model[0]!.toUpperCase() ? word[0]!.toUpperCase() + word.slice(1) : word;
}

/** Swaps sides in every text and key of plain data, so that what refers to what stays true. */
export function swapSidesIn<T>(value: T): T {
  if (typeof value === 'string') return swapSides(value) as T;
  if (Array.isArray(value)) return value.map(swapSidesIn) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [swapSides(key), swapSidesIn(inner)])) as T;
}

export function reflectInput(input: Input): Input {
  return input.channel && NEGATED.has(input.channel) ? { ...input, min: 0 - input.max, max: 0 - input.min } : input;
}

export function reflectRequirement(requirement: Requirement, inputs: readonly Input[]): Requirement {
  const kind = kindOf(requirement);
  const change = (values: Values) => reflectHeld(values, inputs);
  const turned = kind.reflected?.(requirement) ?? requirement;
  const reflected = kind.withValues?.(turned, change) ?? turned;
  return reflected.at ? { ...reflected, at: change(reflected.at) } : reflected;
}

/** A slip that measures something else, in the mirrored frame. Its names are swapped here too. */
export function reflectSlip(slip: Slip): Slip {
  return slip.gauge ? { ...slip, gauge: reflectGauge(swapSidesIn(slip.gauge)) } : slip;
}

/** A response that is a pose, with its values as the mirrored inputs take them; any other as it is. */
export function reflectResponse(response: unknown, inputs: readonly Input[]): unknown {
  return mapInputs(response, (values) => reflectHeld(values, inputs));
}

function reflectHeld(values: Values, inputs: readonly Input[]): Values {
  const negated = new Set(inputs.filter(({ channel }) => channel && NEGATED.has(channel)).map(({ id }) => id));
  return Object.fromEntries(Object.entries(values).map(([id, value]) => [id, negated.has(id) ? 0 - value : value]));
}
