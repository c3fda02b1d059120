import { type Reader, refuseValue } from '../../solver/document/reader.ts';

const FORM = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2})$/;

/** A time with its zone (ISO 8601), as it was written. */
export const time: Reader<string> = (value) =>
  typeof value === 'string' && FORM.test(value) && Number.isFinite(Date.parse(value)) && isInCalendar(value)
    ? value
    : refuseValue(value, 'a time with its zone, such as 2026-12-01T17:00+01:00');

/** Browsers differ on the 30th of February and on 24 o'clock: some refuse them, some count on. */
function isInCalendar(written: string): boolean {
  const toTheMinute = written.slice(0, 16);
  const at = Date.parse(`${toTheMinute}Z`);
  return Number.isFinite(at) && new Date(at).toISOString().startsWith(toTheMinute);
}

/** Milliseconds since 1970 of a time that was read. */
export const millisecondsOf = (written: string): number => Date.parse(written);
