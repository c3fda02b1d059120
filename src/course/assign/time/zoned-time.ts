const MINUTE_MS = 60_000;

/**
 * The time that a clock on the wall of a zone shows, with that zone's offset: ISO 8601. What a clock skips in spring is
 * taken as if it had not been put forward; of what it shows twice in autumn the second is meant.
 * @param local as a field gives it: "2026-12-01T17:00"
 * @param zone of the IANA time zone database: "Europe/Berlin"
 */
export function zonedTime(local: string, zone: string): string {
  const wallMs = Date.parse(`${local}Z`);
  const guessed = offsetMinutes(wallMs, zone);
  const offset = offsetMinutes(wallMs - guessed * MINUTE_MS, zone);
  return `${local}${offsetText(offset)}`;
}

/** How far the clocks of a zone are ahead of UTC at a moment. */
export function offsetMinutes(atMs: number, zone: string): number {
  const parts = new Intl.DateTimeFormat('en', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
  }).formatToParts(atMs);
  const part = (type: Intl.DateTimeFormatPartTypes) => Number(parts.find((one) => one.type === type)!.value);
  const wallMs = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
  return Math.round((wallMs - Math.floor(atMs / MINUTE_MS) * MINUTE_MS) / MINUTE_MS);
}

function offsetText(minutes: number): string {
  const [hours, rest] = [Math.floor(Math.abs(minutes) / 60), Math.abs(minutes) % 60];
  return `${minutes < 0 ? '-' : '+'}${String(hours).padStart(2, '0')}:${String(rest).padStart(2, '0')}`;
}

/** The zone of this machine. */
export const ownZone = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;

/** Every zone there is to choose from, the one named first among them. */
export function zones(first: string): string[] {
  const known = Intl.supportedValuesOf?.('timeZone') ?? [];
  return [...new Set([first, 'UTC', ...known])].filter((zone) => zone !== '');
}
