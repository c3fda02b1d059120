import { expect, test } from 'vitest';
import { asSet, inZone } from '../../../src/course/assign/time/time-words.ts';
import { zonedTime } from '../../../src/course/assign/time/zoned-time.ts';
import { millisecondsOf } from '../../../src/delivery/assignment/time.ts';

// Offsets and days of change: IANA time zone database, files europe and northamerica, from memory.
test.each([
  ['2026-12-01T17:00', 'Europe/Berlin', '+01:00'],
  ['2026-07-01T17:00', 'Europe/Berlin', '+02:00'],
  ['2026-12-01T17:00', 'America/St_Johns', '-03:30'],
  ['2026-12-01T17:00', 'Asia/Kathmandu', '+05:45'],
  ['2026-12-01T00:00', 'UTC', '+00:00'],
])('%s on the wall in %s is %s from UTC', (local, zone, offset) => {
  expect(zonedTime(local, zone)).toBe(local + offset);
});

test('what the clock skips is after the change, what it shows twice is the second time', () => {
  expect(millisecondsOf(zonedTime('2026-03-29T02:30', 'Europe/Berlin'))).toBe(Date.UTC(2026, 2, 29, 1, 30));
  expect(millisecondsOf(zonedTime('2026-10-25T02:30', 'Europe/Berlin'))).toBe(Date.UTC(2026, 9, 25, 1, 30));
});

test('hours on both sides of a change keep their own offset', () => {
  const offsets = ['01:59', '03:01'].map((clock) => zonedTime(`2026-03-29T${clock}`, 'Europe/Berlin').slice(16));
  expect(offsets).toEqual(['+01:00', '+02:00']);
});

test('a time is told as it was set, and on another clock', () => {
  expect(asSet('2026-12-04T17:00+01:00')).toBe('Friday 4 December 2026 at 17:00 (UTC+01:00)');
  expect(asSet('2026-12-04T17:00Z')).toBe('Friday 4 December 2026 at 17:00 (UTC)');
  expect(inZone('2026-12-04T17:00+01:00', 'America/St_Johns')).toBe(
    'Friday 4 December 2026 at 12:30 in America/St Johns',
  );
});
