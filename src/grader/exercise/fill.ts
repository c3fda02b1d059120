import { numberText } from '../words/numberText.ts';

/**
 * Fills a structure's names into an exercise: "$name" alone becomes the value, "-$name" its negative, "{name}" inside a text or
 * a key becomes its text, and list items marked `only` for other structures fall away.
 * Fails with the name that nothing gives a value to.
 */
export function fill(value: unknown, names: Readonly<Record<string, unknown>>, structure: string): unknown {
  if (typeof value === 'string') return fillText(value, names);
  if (Array.isArray(value)) {
    return value.filter((item) => standsIn(item, structure)).map((item) => fill(item, names, structure));
  }
  if (value === null || typeof value !== 'object') return value;
  const filled: Record<string, unknown> = {};
  for (const [key, inner] of Object.entries(value)) {
    if (key === 'only') continue;
    filled[String(fillText(key, names))] = fill(inner, names, structure);
  }
  return filled;
}

function standsIn(item: unknown, structure: string): boolean {
  if (item === null || typeof item !== 'object' || !('only' in item)) return true;
  return Array.isArray(item.only) && item.only.includes(structure);
}

function fillText(text: string, names: Readonly<Record<string, unknown>>): unknown {
  const negative = /^-\$([a-zA-Z]\w*)$/.exec(text);
  if (negative) return 0 - Number(givenValue(negative[1]!, names, text));
  const whole = /^\$([a-zA-Z]\w*)$/.exec(text);
  if (whole) return givenValue(whole[1]!, names, text);
  return text.replace(/\{([a-zA-Z]\w*)\}/g, (_, name: string) => said(givenValue(name, names, text)));
}

function said(given: unknown): string {
  if (Array.isArray(given)) return given.map(said).join(', ');
  return typeof given === 'number' ? numberText(given) : String(given).replace(/^-(?=[xyz]$)/, '−');
}

/** A text that a name stands for may speak of other names; of itself it may not, so that filling ends. */
function givenValue(name: string, names: Readonly<Record<string, unknown>>, text: string): unknown {
  if (!Object.hasOwn(names, name)) throw new Error(`"${text}" speaks of ${name}, which the structure does not give`);
  const { [name]: given, ...others } = names;
  return typeof given === 'string' ? fillText(given, others) : given;
}
