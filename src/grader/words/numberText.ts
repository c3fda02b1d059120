/** A number as a text has it: below 0 with a minus, not a hyphen. */
export function numberText(value: number): string {
  return String(value).replace(/^-/, '−');
}
