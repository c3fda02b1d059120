const FORM = {
  weekday: 'long',
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
  hourCycle: 'h23',
} as const;

/** A time as it was set: "Friday 4 December 2026 at 17:00 (UTC+01:00)". */
export function asSet(written: string): string {
  const [, wall = '', zone = ''] = /^(.{16}).*?(Z|[+-]\d\d:\d\d)$/.exec(written) ?? [];
  return `${words(Date.parse(`${wall}Z`), 'UTC')} (${zone === 'Z' ? 'UTC' : `UTC${zone.replace('-', '−')}`})`;
}

/** The same moment on the clocks of a zone: "Friday 4 December 2026 at 16:00 in Europe/London". */
export function inZone(written: string, zone: string): string {
  return `${words(Date.parse(written), zone)} in ${zone.replaceAll('_', ' ')}`;
}

/** Put together from its parts: browsers differ in what they set between them. */
function words(atMs: number, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en-GB', { ...FORM, timeZone }).formatToParts(atMs);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((one) => one.type === type)!.value;
  return `${part('weekday')} ${part('day')} ${part('month')} ${part('year')} at ${part('hour')}:${part('minute')}`;
}
