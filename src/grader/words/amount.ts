import { numberText } from './numberText.ts';

/** A measured amount for people: "12.3°", "0.4 mm", "3 fields". Three digits are enough to act on. */
export function amountText(value: number | null, unit: string): string {
  if (value === null || !Number.isFinite(value)) return 'beyond any number';
  const digits = numberText(Number(value.toPrecision(3)));
  if (unit === 'degrees') return `${digits}°`;
  return `${digits} ${value === 1 ? unit.replace(/s$/, '') : unit}`;
}
