import { numberText } from '../words/numberText.ts';

/** Lengths in every text of plain data, `factor` times as long: at 2, "30 cm" becomes "60 cm". */
export function scaleLengthsIn<T>(value: T, factor: number): T {
  if (typeof value === 'string') return scaleLengths(value, factor) as T;
  if (Array.isArray(value)) return value.map((inner) => scaleLengthsIn(inner, factor)) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, scaleLengthsIn(inner, factor)])) as T;
}

/** A number and its unit. Of a number below 0 the minus stays where it is. */
function scaleLengths(text: string, factor: number): string {
  return text.replace(/\d+(?:\.\d+)?(?= (?:m|cm|mm)\b)/g, (length) => longer(Number(length), factor));
}

/** Without the digits that only binary fractions bring in. */
const longer = (length: number, factor: number): string => numberText(Number((length * factor).toPrecision(12)));
